export const words = {
  edge: {
    words: (p: { release: string }) =>
      `The crack stays. Cool the hot run until the turbine comes to rest before the brake is let go, at ${p.release} on the time axis. Find the hottest fluid at which it still does.`,
    hint: (p: { release: string }) =>
      `Go down in big steps until the solid line drops to zero before ${p.release}. Then go back up slowly.`,
    after: (p: { limit: string }) =>
      `Hotter than this, it is still turning when the brake is let go. Kept on the brake, it would stop a few degrees further up. But the check looks ${p.limit} after selection, and it has been failing this crack from much cooler fluid on. Cool it until “too late for the check” goes away, and you know both ends. Drive it past both before you judge a repair.`,
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
    hint: 'A thin gap hardly leaks cold. What slows the fill when the fluid is thick? Think of the way in, not the way out.',
    after:
      'Late cold and late hot points at the way in, at an open way out, at plates that take more stroke, or at a low level. Late only when cold points at a lip gone hard, a clogged filter, or fluid that drained back overnight. Late hot only points at a gap, at a valve that fades, or at a worn pump. Check the level, then time it cold: it costs two minutes.',
  },
  liar: {
    words:
      'Find the fault that stores a code although the turbine really stops. Look at the turbine and at what the sensor says of it.',
    hint: 'The controller knows only what its sensors tell it.',
    after:
      'The clutch was fine. The sensor read 300 rpm at a standstill, and the controller did as it was told. Before you open a transmission for a ratio code, check that the turbine reading falls to zero in gear, at a stop, with the clutch known to hold.',
  },
};
