interface Pairs {
  cold: string;
  warm: string;
  hot: string;
  coldWas: string;
  coldIs: string;
  coldDoubt: string;
  coldUntouched: string;
  hotWas: string;
  hotIs: string;
  hotDoubt: string;
  warmIs: string;
  warmHalf: string;
  hotHalf: string;
  apart: string;
}

export const words = {
  title: 'Before and after',
  controls: {
    before: 'Fluid, first test',
    after: 'Fluid, second test',
    test: 'The test',
    car: 'The car',
    load: 'Engine, for a gauge',
    rows: 'A row of the log every',
  },
  tests: {
    tap: { words: 'Forward tap', note: 'pressure of the clutch' },
    line: { words: 'Line', note: 'pressure before the feed' },
    stop: { words: 'Stop time', note: 'Drive until the turbine stands' },
  },
  cars: { a: 'Car A', b: 'Car B', c: 'Car C', d: 'Car D' },
  loads: {
    idle: { words: '700 rpm, both times' },
    fast: { words: '1500 rpm, both times' },
    mixed: { words: '700 first, then 1500' },
  },
  predict: {
    question: (p: Pairs) =>
      `Car A slipped at ${p.hot}, and its split seal is renewed. You read the forward tap at idle, once before and once after. Which pair proves the repair?`,
    options: {
      cold: {
        words: (p: Pairs) => `${p.cold} before, ${p.cold} after: like with like`,
        why: (p: Pairs) =>
          `Like with like is half of it. But cold the split car read ${p.coldWas} and the repaired one ${p.coldIs}, and two such readings cannot be told apart under ${p.coldDoubt}. The fault did not show, so neither can its repair.`,
      },
      mixed: {
        words: (p: Pairs) => `${p.hot} before, ${p.warm} after: hot is hot`,
        why: (p: Pairs) =>
          `The reading leaps up, and it would with half of the split left in. Such a car reads ${p.warmHalf} at ${p.warm}, where a good one reads ${p.warmIs}: not to be told apart. At ${p.hot} it falls to ${p.hotHalf}.`,
      },
      hot: {
        words: (p: Pairs) => `${p.hot} before, ${p.hot} after`,
        why: (p: Pairs) =>
          `Same test, same temperature, and as hot as the complaint: ${p.hotWas} became ${p.hotIs}, where ${p.hotDoubt} would have been enough. Nothing else changed between the two.`,
      },
      any: {
        words: 'Any of these, if it reads clearly better',
        why: (p: Pairs) =>
          `Better by itself is no proof. Left alone and tested cold, the split car reads ${p.coldUntouched}, a leap up from ${p.hotWas}, and nobody touched it.`,
      },
    },
    runLabel: 'Take both pairs',
  },
  outcome: (p: Pairs) =>
    `Both at ${p.cold}: ${p.coldWas} and ${p.coldIs}, doubt ${p.coldDoubt}. Both at ${p.hot}: ${p.hotWas} and ${p.hotIs}, doubt ${p.hotDoubt}. ${p.apart} apart they are not the same test. Only the pair at ${p.hot} proves it.`,
  picture: {
    before: (p: { temp: string; value: string }) => `Before, ${p.temp}: ${p.value}`,
    after: (p: { temp: string; value: string }) => `After, ${p.temp}: ${p.value}`,
    sound: (p: { temp: string; value: string }) => `A healthy car, ${p.temp}: ${p.value}`,
    never: 'never in 2.5 s',
    open: '?',
    doubt: 'Each bar: where the reading may truly lie',
    axis: (p: { name: string; unit: string }) => `${p.name}, ${p.unit}`,
    names: { tap: 'Forward tap', line: 'Line', stop: 'Stop time' },
    unread: 'Three rows on one axis: before, after, and a healthy car. They are read in the run.',
    describe: (p: {
      name: string;
      before: string;
      after: string;
      right: string;
      doubt: string;
      room: string;
    }) =>
      `${p.name}. Before ${p.before}, after ${p.after}, and the two have to differ by more than ${p.doubt}. A healthy car reads ${p.right} there, give or take ${p.room}.`,
  },
  says: {
    proves: (p: Said) =>
      `Changed by ${p.difference}, doubt ${p.doubt}. Same test, as hot as the complaint, and now right: it proves the repair, as far as this test can see.`,
    temperature: (p: Said) =>
      `${p.apart} apart, where ${p.same} is allowed. That is not the same test, so it proves nothing.`,
    speed: () => 'Idle before and revs after. That is not the same test, so it proves nothing.',
    doubt: (p: Said) =>
      `Changed by ${p.difference}, and only more than ${p.doubt} would count. It proves nothing.`,
    cooler: (p: Said) =>
      `A clear change, at ${p.temp}. The complaint comes at ${p.hot}, and of that it proves nothing.`,
    off: (p: Said) =>
      `It reads ${p.after} where a healthy car reads ${p.right}, give or take ${p.room}. It proves that it is not cured.`,
  },
};
interface Said {
  difference: string;
  doubt: string;
  apart: string;
  same: string;
  temp: string;
  hot: string;
  after: string;
  right: string;
  room: string;
}
