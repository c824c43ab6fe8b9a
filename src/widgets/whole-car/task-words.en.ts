export const words = {
  givesUp: {
    words:
      'Move the time to the moment at which the controller gives up on the hot car. Which event comes right before it?',
    hint: 'Go on until the panel beside the gauge turns dark, then back in small steps until it has just turned.',
    after:
      'It raised the pressure first. More pressure mostly pushed more fluid through the crack, the turbine kept turning, and the second look ended it. The controller never saw the pressure. It saw a speed that did not come down.',
  },
  line: {
    words:
      'Take another fault, one that pulls the hot line down as well: standing in gear it has to read at least a tenth low. The gauge that tells it from a split seal is the one on the line tap.',
    hint: 'What makes pressure, or lets it go before the feed hole? Choose it and make it bad.',
    after:
      'Now the line is short too, and every clutch is fed from that line. With a split seal the line is right and two circuits are starved. So read the line first: it halves the list of suspects.',
  },
  coldToo: {
    words:
      'Find a fault that makes the cold car give up as well. A customer with that car would never say it drives well in the morning.',
    hint: 'A thin gap hardly leaks while the fluid is thick. What lets fluid out, or plates slip, at any temperature?',
    after:
      'This one does not wait for heat. That the trouble comes with heat is evidence, so ask for it: when it starts, cold, and after how many miles.',
  },
  reached: {
    time: (p: { time: string; state: string }) =>
      `At ${p.time} the panel of the hot car says “${p.state}”.`,
    line: (p: { line: string; wanted: string }) =>
      `Standing in gear the hot line has ${p.line} of ${p.wanted}.`,
  },
};
