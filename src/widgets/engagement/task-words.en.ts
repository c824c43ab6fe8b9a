export const words = {
  edge: {
    words: (p: { limit: string }) =>
      `The crack stays. Cool the hot run until the turbine stops in time for the check, ${p.limit} after selection. Find the hottest fluid at which it still does.`,
    hint: 'Go down in big steps until the solid line drops to zero before 2 s on the time axis. Then go back up slowly.',
    after: (p: { hot: string }) =>
      `A little above this lies the fault temperature of this car, for this check. Drive it past that point before you judge a repair. At ${p.hot} you are well past it.`,
  },
  cable: {
    words:
      'The car selects Park by itself. Leave the crack and the heat as they are. Change one thing so that the controller still stores the code and cannot select Park.',
    hint: 'Who moves the park pawl? With a cable, a hand does.',
    after:
      'Same seal, same slip, same code. With a cable and lever the pawl is out of the controller’s reach, so the car drops to Neutral and rolls. Two complaints, one fault.',
  },
  lateCold: {
    words: (p: { late: string; cool: string }) =>
      `Find a fault that makes the turbine stop late cold as well: more than ${p.late} after selection at ${p.cool}. Then look at how the hot run differs, or does not.`,
    hint: 'A thin gap hardly leaks cold. What slows the fill at any temperature? Think of the way in, not the way out.',
    after:
      'Late cold and late hot points at the way in, at an open way out, or at plates that take more stroke. Late hot only points at a gap. Time it cold first: it costs two minutes.',
  },
  liar: {
    words:
      'Find the fault that stores a code although the turbine really stops. Look at the turbine and at what the sensor says of it.',
    hint: 'The controller knows only what its sensors tell it.',
    after:
      'The clutch was fine. The sensor read 300 rpm at a standstill, and the controller did as it was told. Before you open a transmission for a ratio code, check that the turbine reading falls to zero in gear, at a stop, with the clutch known to hold.',
  },
};
