export const words = {
  tasks: {
    alone: {
      words: (p: { cold: string }) =>
        `Car one has the right fill. At ${p.cold} its stick stands below MIN. Add nothing. Warm it until the stick stands at the middle of its marks.`,
      hint: 'Move the temperature alone, and watch the level climb.',
      after: (p: { cold: string; low: string; room: string; from: string; to: string }) =>
        `One fill, two readings. At ${p.cold} the right fill stands ${p.low} low, and that is room for ${p.room}, with nothing missing. The stick of this transmission is meant for ${p.from} to ${p.to}. Below that window a low reading tells you nothing yet.`,
    },
    driveway: {
      words: (p: { short: string; window: string; tenth: string }) =>
        `Car two is ${p.short} short. At ${p.window} it idles with the pick-up covered. Its customer hears it whine first thing in the morning, on the flat driveway, idling. Make the pump draw ${p.tenth} air there.`,
      hint: 'It is the same driveway and the same idle. What is different in the morning?',
      after: (p: { short: string; window: string; fast: string; speed: string; bend: string }) =>
        `Cold, the fluid has shrunk and the mouth is bare. Warm at idle it hides. Even so, at ${p.window} and ${p.speed} the pump draws ${p.fast} air, and in a brisk bend ${p.bend}. So a little low is worst cold, and it shows with speed, in bends and on hills. Our line stays right, because the model spreads the air evenly. A real needle flutters.`,
    },
    hot: {
      words: (p: { cold: string; hot: string; asked: string; down: string }) =>
        `Car three, in Drive at idle on the flat. At ${p.cold} the line reads ${p.asked}, as asked. At ${p.hot} it reads under ${p.down}. A colleague says pump. Find a level that does the same by itself.`,
      hint: 'Leave it hot and take fluid out until the line falls. Then look at it cold.',
      after: (p: { farShort: string; coldAir: string; hotAir: string; hotLine: string }) =>
        `${p.farShort} short draws ${p.coldAir} air cold and ${p.hotAir} hot, so the pick-up is worse off cold. Yet the line falls hot, to ${p.hotLine}: hot fluid leaks more everywhere, and a pump that draws air cannot make up for it. “Only hot” does not clear the level. A needle that flutters, and a stick, would have told.`,
    },
  },
  reached: {
    stick: (p: { temp: string; mm: string }) => `At ${p.temp} it stands ${p.mm} from the middle.`,
    air: (p: { air: string }) => `Here the pump draws ${p.air} air.`,
    noAir: 'Here the pick-up is still covered.',
    driveway: 'The driveway is flat, and the engine idles.',
    line: (p: { cold: string; hot: string }) =>
      `With this fill the line reads ${p.cold} cold and ${p.hot} hot.`,
  },
};
