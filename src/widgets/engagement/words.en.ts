interface At {
  temp: string;
}

export const words = {
  title: 'Seven seconds, with Drive selected',
  controls: {
    temp: 'Fluid in the hot run',
    show: 'Speed shown',
    shown: {
      turbine: { words: 'Turbine' },
      sensor: { words: 'Turbine, as its sensor says' },
      engine: { words: 'Engine' },
      output: { words: 'Output' },
      slip: { words: 'Slip' },
    },
    failSafe: 'Fail-safe with a cable',
    failSafes: {
      neutral: { words: 'Neutral' },
      'default-gear': { words: 'One gear held' },
    },
  },
  predict: {
    question: (p: { crack: string }) =>
      `A crack of ${p.crack} in the transfer seal, electronic range selection. Cold, the turbine stops within a second of selecting Drive and the car pulls away. Now the fluid is hot. What happens?`,
    options: {
      late: {
        words: 'The turbine stops a little later. The car pulls away as before.',
        why: 'That is what a smaller crack does. This one takes more than the feed can bring, so the pressure never gets to what the torque needs. The turbine keeps turning.',
      },
      slips: {
        words: 'The turbine keeps turning. The clutch slips, and the controller lets it.',
        why: 'It does keep turning, and the clutch slips. But slip is exactly what the controller watches for. It raises pressure once, and when that does not help it stores a code and lets the clutch go.',
      },
      park: {
        words: 'The turbine keeps turning. The controller gives up and selects Park.',
        why: 'The turbine does not stop, the controller reads that as slip, and raising the pressure only pushes more fluid through the crack. With electronic selection it can move the park pawl, and at a standstill it does.',
      },
    },
    runLabel: 'Run it hot',
  },
  /** What one run came to. */
  run: {
    stops: (p: At & { time: string }) => `At ${p.temp} the turbine stops after ${p.time}.`,
    late: (p: At & { time: string }) =>
      `At ${p.temp} the turbine stops after ${p.time}, too late for the check.`,
    never: (p: At) => `At ${p.temp} the turbine never stops.`,
    code: 'The controller stores a code.',
    park: 'The controller stores a code, and the car selects Park by itself.',
  },
  atTheCheck: (p: { after: string; turbine: string; has: string; wants: string }) =>
    `When the controller looked, ${p.after} after selection, the turbine turned at ${p.turbine}. The clutch had ${p.has} of the ${p.wants} wanted.`,
  fault: (p: { fault: string }) => `${p.fault}.`,
  axes: {
    time: 'Time',
    turbine: 'Turbine speed',
    sensor: 'Turbine speed, as its sensor says',
    engine: 'Engine speed',
    output: 'Output speed',
    slip: 'Slip',
    pressure: 'Clutch pressure',
  },
  speeds: {
    takeaway: (p: { select: string; release: string }) =>
      `Range selected at ${p.select}, brake off and throttle at ${p.release}.`,
    cold: 'cold',
    hot: 'hot',
    stripCold: 'Controller, cold',
    stripHot: 'Controller, hot',
  },
  pressures: {
    takeaway: 'Wanted is what the controller commands in the hot run; had is what the clutch gets.',
    wanted: 'wanted, hot',
    cold: 'had, cold',
    hot: 'had, hot',
  },
  player: {
    name: 'Go through the seven seconds',
    reading: (p: { time: string; cold: string; coldHas: string; hot: string; hotHas: string }) =>
      `At ${p.time}: cold, turbine ${p.cold}, clutch ${p.coldHas}; hot, turbine ${p.hot}, clutch ${p.hotHas}.`,
    last: (p: { event: string }) => `Last in the hot run: ${p.event}.`,
    nothing: 'Nothing has happened yet.',
  },
};
