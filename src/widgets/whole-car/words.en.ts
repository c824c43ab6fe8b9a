export const words = {
  title: 'Cold beside hot',
  controls: {
    time: 'Time',
    fault: 'Fault in both',
    temp: 'Fluid in the hot one',
  },
  predict: {
    question: (p: { crack: string; cold: string; hot: string }) =>
      `The same crack of ${p.crack} in the transfer seal, at ${p.cold} above and ${p.hot} below. Drive is selected. Which reading differs first?`,
    options: {
      line: {
        words: 'Line pressure. A leak that size pulls the pump down.',
        why: 'A worn pump would do that. This leak sits behind the feed hole, and the hole lets only so much past. The pump has enough left to keep the line where it was told to be.',
      },
      clutch: {
        words: 'Clutch pressure. It stays low while the line stays up.',
        why: 'Hot fluid leaves through the crack nearly as fast as the feed hole lets it in. The piston comes late, and little is left behind it to squeeze with. The line does not show it. A gauge at the clutch tap does.',
      },
      turbine: {
        words: 'Turbine speed. It runs on, and pressure gives way.',
        why: 'The turbine does keep turning, but it parts second. It turns because there is too little pressure to squeeze the plates, not the other way around.',
      },
      controller: {
        words: 'The controller. It lets go, then the pressure falls.',
        why: 'It does let the clutch go, and that comes last. By then the turbine has been turning for seconds, and the controller has raised the pressure once for nothing.',
      },
    },
    runLabel: 'Run both cars',
  },
  /** When each reading of the hot car left that of the cold one, after selection. */
  parted: (p: { clutch: string; turbine: string; controller: string }) =>
    `After selection the clutch pressures part at ${p.clutch}, the turbines at ${p.turbine}, the controllers at ${p.controller}.`,
  lines: {
    never: 'The line pressures stay together.',
    raised: (p: { line: string }) =>
      `The line pressures stay together until ${p.line}. Then the hot one is the higher: its controller has asked for more.`,
  },
  moment: (p: { time: string; cold: string; coldClutch: string; hot: string; hotClutch: string }) =>
    `${p.time}: cold ${p.cold}, ${p.coldClutch}; hot ${p.hot}, ${p.hotClutch}.`,
  last: (p: { event: string }) => `Hot car: ${p.event}.`,
  /** The hot car is in Park and the engine races: nobody has lifted off. */
  footDown: 'The driver still has a foot on the gas, so its engine races.',
  nothing: 'Both are in Park.',
  player: 'Go through the story',
  chart: {
    time: 'Time',
    turbine: 'Turbine speed',
    takeaway: 'Move along it, and both cars go with you.',
    clutch: 'Clutch pressure',
    clutchTakeaway:
      'Wanted is what the controller commands in the hot car; had is what the clutch gets.',
    line: 'Line pressure',
    lineTakeaway: 'If both lines stay together, the pump is not what starves the clutch.',
    cold: 'cold',
    hot: 'hot',
    wanted: 'wanted, hot',
    had: { cold: 'had, cold', hot: 'had, hot' },
  },
};
