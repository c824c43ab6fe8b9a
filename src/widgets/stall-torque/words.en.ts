interface Run {
  idle: string;
  twice: string;
  atIdle: string;
  atTwice: string;
}

export const words = {
  title: 'How hard the converter pushes',
  controls: { rpm: 'Engine, wheels standing', pressure: 'Clutch pressure' },
  predict: {
    question: (p: Run) =>
      `In gear, brakes on, the engine idles at ${p.idle}. The clutch must hold ${p.atIdle}. Now the engine is brought up to ${p.twice}, and no wheel turns. What must the clutch hold? (On a car this is a stall test. Here it hurts nobody.)`,
    options: {
      same: {
        words: 'As much as before, since the wheels stand',
        why: (p: Run) =>
          `The wheels stand, but the fluid does not. The pump half throws it faster at a turbine that cannot give way, and that is the push: ${p.atTwice} in place of ${p.atIdle}.`,
      },
      twice: {
        words: 'Twice as much, since the engine turns twice as fast',
        why: (p: Run) =>
          `Twice as fast, the fluid hits twice as hard. And twice as much of it comes round. Two times two is four: ${p.atTwice}.`,
      },
      fourfold: {
        words: 'Four times as much',
        why: (p: Run) =>
          `Torque goes with the square of engine speed: twice the speed, four times the torque, ${p.atTwice}. A clutch that holds at idle can let go at the first touch of the pedal.`,
      },
    },
    runLabel: 'Bring the engine up',
  },
  outcome: (p: Run) => `At ${p.idle} it was ${p.atIdle}. At ${p.twice} it is ${p.atTwice}.`,
  says: {
    holds: (p: { speed: string; asked: string; holds: string }) =>
      `Holds: at ${p.speed} the converter asks ${p.asked}, and the clutch can hold ${p.holds}.`,
    slips: (p: { speed: string; asked: string; holds: string }) =>
      `Slips: at ${p.speed} the converter asks ${p.asked}, and the clutch can hold ${p.holds}.`,
    heat: (p: { heat: string }) => `Heat in the converter: ${p.heat}.`,
  },
  chart: {
    name: 'Torque on the clutch, wheels standing',
    takeaway: 'what the converter asks, and what this clutch can hold.',
    x: 'Engine speed',
    y: 'Torque',
    asked: 'asked',
    holds: 'this clutch',
    letsGo: (p: { speed: string }) => `lets go at ${p.speed}`,
    now: 'now',
  },
};
