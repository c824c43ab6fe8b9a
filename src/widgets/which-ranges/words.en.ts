interface Amount {
  amount: string;
}
interface Hot {
  line: string;
  forward: string;
  reverse: string;
  high: string;
}

export const words = {
  title: 'Which ranges suffer?',
  controls: {
    circuit: 'Sits in (where it sits in one circuit)',
    engaged: 'Range drawn',
    test: 'Test drawn',
  },
  predict: {
    question: (p: { crack: string; hairs: string }) =>
      `The table shows a healthy transmission. Now the transfer seal splits, ${p.crack}, ${p.hairs} wide. Which gauges fall?`,
    options: {
      'all-three': {
        words: 'All three clutches. They live on the same line.',
        why: (p: Hot) =>
          `They share the line, but the line did not fall: ${p.line} hot under load, as before. What the split takes has to come through one clutch’s own feed hole. High does not pass through the seal and still has ${p.high}.`,
      },
      'both-always': {
        words: 'Forward and reverse, cold and hot alike.',
        why: (p: { coldForward: string; coldHealthy: string; hairs: string }) =>
          `The right two, but not cold. Stiff fluid hardly gets through a split ${p.hairs} wide: ${p.coldForward} cold under load, where a healthy one has ${p.coldHealthy}. A hole would show cold as well.`,
      },
      'both-hot': {
        words: 'Forward and reverse, hot only. High stays.',
        why: (p: Hot & { hotHealthy: string }) =>
          `Both pass through that seal, so both lose: ${p.forward} hot under load where a healthy one has ${p.hotHealthy}. High goes another way and keeps ${p.high}. And a thin split leaks hot, hardly cold. Two ranges that suffer together point at what they share.`,
      },
      forward: {
        words: 'Forward only. It carries the most.',
        why: (p: Hot & { reverseHealthy: string }) =>
          `A leak does not know how much a clutch carries. It takes from every passage that runs through the seal. Reverse runs through it too and loses as well: ${p.reverse}, where a good one, boosted, has ${p.reverseHealthy}.`,
      },
    },
    runLabel: 'Split the seal',
  },
  outcome: (p: Hot) =>
    `Cold every gauge reads right. Hot under load: forward ${p.forward}, reverse ${p.reverse}, high ${p.high}, line ${p.line}.`,
  healthy: 'A healthy transmission',
  /** "Worn sealing rings, reverse clutch, 0.12 mm" */
  fault: (p: { fault: string; clutch: string | undefined; amount: string | undefined }): string =>
    [p.fault, p.clutch, p.amount].filter((one) => one !== undefined).join(', '),
  amounts: {
    size: (p: Amount) => p.amount,
    times: (p: Amount) => `${p.amount} times as hard to draw through`,
    missing: (p: Amount) => `${p.amount} missing`,
    viscosity: (p: Amount) => `${p.amount} of its viscosity left`,
    hole: (p: Amount) => `${p.amount} of the hole left`,
    friction: (p: Amount) => `${p.amount} of the friction left`,
    command: (p: Amount) => `${p.amount} of what is commanded`,
    lost: (p: Amount) => `${p.amount} of its command lost hot`,
  },
  says: {
    fault: (p: { fault: string }) => `${p.fault}.`,
    alike: (p: { gauges: string }) => `Cold and hot alike: ${p.gauges}.`,
    coldAndHot: (p: { cold: string; hot: string }) => `Cold: ${p.cold}. Hot: ${p.hot}.`,
    allRight: 'every gauge reads right',
    everyClutch: 'every clutch',
    line: { low: 'line low', gone: 'line gone' },
    clutches: {
      low: (p: { clutches: string }) => `${p.clutches} low`,
      gone: (p: { clutches: string }) => `${p.clutches} gone`,
    },
    friction: 'The pressure is there and the plates still carry less torque.',
    sensor: (p: { speed: string }) => `The turbine sensor reads ${p.speed} at rest.`,
    cooler: {
      cold: 'The cooler runs short cold.',
      hot: 'The cooler runs short hot.',
      both: 'The cooler runs short cold and hot.',
    },
  },
  table: {
    cold: (p: { temp: string }) => `Cold, ${p.temp}`,
    hot: (p: { temp: string }) => `Hot, ${p.temp}`,
    idle: 'idle',
    load: 'load',
    /** The pressure at which a clutch holds in the test of a column, in the unit of the table. */
    needs: (p: { amount: string }) => `needs ${p.amount}`,
    verdicts: { ok: 'ok', low: 'low', gone: 'gone' },
    none: 'none',
    slips: 'slips',
  },
  gauges: {
    name: 'What the gauges show',
    head: 'What the gauges show:',
    healthy: 'a healthy transmission.',
    cooler: 'Cooler gets',
  },
};
