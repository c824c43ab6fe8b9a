interface Ends {
  hot: string;
  frost: string;
  speed: string;
}
interface Got extends Ends {
  maker: string;
  unknown: string;
}

export const words = {
  title: 'Two filters that look alike',
  parts: { maker: 'maker’s part', unknown: 'unknown part' },
  controls: {
    rpm: 'Engine speed',
    media: 'Media of the unknown part',
    open: 'Media of the maker’s part not plugged',
    watch: 'Where both filters are',
  },
  media: 'of the maker’s',
  open: 'of all of it',
  watch: { pump: 'In front of the pump', pour: 'Under the funnel' },
  predict: {
    question: (p: Ends) =>
      `Same shell, same neck, but the unknown part has half the media. Warm fluid runs through both. The engine turns at ${p.speed}. What does the pump get behind the unknown part, at ${p.hot} and then in frost, at ${p.frost}?`,
    options: {
      alike: {
        words: 'The same as behind the maker’s part, hot and cold. It fits, and it flows.',
        why: (p: Got) =>
          `Hot it is so, and that is the trap. At ${p.frost} the pump gets ${p.unknown} of what it asks for behind the unknown part, and ${p.maker} behind the other. That it flows warm tells you nothing about cold.`,
      },
      half: {
        words: 'Half as much, hot and cold. It has half the media.',
        why: (p: Got) =>
          `The pump takes what it asks for, as long as the air can push it through. Hot, twice of next to nothing is still next to nothing. At ${p.frost} it is not, and there the pump gets ${p.unknown}.`,
      },
      cold: {
        words: 'All it asks for hot, and too little in frost.',
        why: (p: Got) =>
          `Both filters cost more as the fluid thickens. The one with half the media costs twice as much, so it comes to the end of what the air can push first. At ${p.frost} its pump gets ${p.unknown}.`,
      },
    },
    runLabel: 'Let it get cold',
  },
  outcome: (p: Got) =>
    `At ${p.hot} both pumps get all they ask for. At ${p.frost} and ${p.speed} the pump behind the maker’s part gets ${p.maker}, and behind the unknown part ${p.unknown}.`,
  says: {
    where: (p: { temp: string; speed: string }) => `At ${p.temp} and ${p.speed}:`,
    gets: {
      maker: (p: { lost: string }) =>
        `the maker’s part costs ${p.lost}, and its pump gets all it asks for.`,
      unknown: (p: { lost: string }) =>
        `The unknown part costs ${p.lost}, and its pump gets all it asks for.`,
    },
    starved: {
      maker: (p: { share: string }) => `behind the maker’s part the pump is starved: ${p.share}.`,
      unknown: (p: { share: string }) =>
        `Behind the unknown part the pump is starved: it gets ${p.share}.`,
    },
    pour: (p: { temp: string; amount: string; maker: string; unknown: string; ratio: string }) =>
      `Poured at ${p.temp}, ${p.amount} runs through the maker’s part in ${p.maker}, and through the unknown part in ${p.unknown}: ${p.ratio} times as long.`,
    pours: (p: { temp: string }) => `Both are poured at ${p.temp}, each with the same amount.`,
  },
  lost: {
    name: 'Lost in the filter, against temperature',
    takeaway: 'Colder than its dot, a pump is starved.',
    axis: 'Lost in the filter',
    limit: 'no more push left',
    starved: {
      maker: (p: { temp: string }) => `maker’s: ${p.temp}`,
      unknown: (p: { temp: string }) => `unknown: ${p.temp}`,
    },
  },
  pour: {
    name: 'One pour through each, against temperature',
    takeaway: (p: { amount: string }) =>
      `Each pour is ${p.amount}. Each line up is ten times as long.`,
    axis: 'Time by the watch',
  },
};
