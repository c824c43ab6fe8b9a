const healthy = (p: { temp: string }) => `Healthy, ${p.temp}`;
const crack = (p: { crack: string; temp: string }) => `Crack ${p.crack}, ${p.temp}`;
interface After {
  /** After selection. */
  after: string;
}
interface Stored extends After {
  code: string;
}

export const words = {
  title: 'What does the controller catch?',
  controls: {
    slipLimit: 'Slip limit',
    slipTime: 'Time over the limit',
    recording: 'Recording',
    engagementTime: 'Engagement check, after selection',
    engagementLimit: 'Engagement check, slip limit',
    noise: 'Noise of the turbine sensor',
    noNoise: 'none',
    eitherWay: 'either way',
    resolution: 'Smallest step the sensor can tell',
    exact: 'exact',
  },
  recordings: {
    cold: healthy,
    hot: healthy,
    frost: healthy,
    hurry: (p: { temp: string }) => `Healthy, ${p.temp}, driver in a hurry`,
    crack16: crack,
    crack25: crack,
    crack30: crack,
    friction: (p: { temp: string }) => `Worn friction, ${p.temp}`,
  },
  predict: {
    question: (p: { wait: string }) =>
      `The ratio check waits ${p.wait} over the limit before it acts. Halve that, so that faults are caught sooner. What else is caught, among healthy cars?`,
    options: {
      nothing: {
        words: 'Nothing. A healthy clutch does not slip.',
        why: (p: { slipped: string }) =>
          `Once it is full, it does not. But it takes a moment to fill, and a driver may have the throttle open by then. The turbine turns free for ${p.slipped} with the check running, and to a controller that is slip.`,
      },
      hurry: {
        words: 'A car whose driver steps on it before the clutch is full.',
        why: (p: { slipped: string; crack: string; gained: string }) =>
          `The clutch is still filling, the throttle is open, so the ratio check runs: slip for ${p.slipped}. The usual limit lets that pass, half of it does not. And what was gained? The code for the crack of ${p.crack} comes ${p.gained} sooner.`,
      },
      frost: {
        words: 'A car in the frost, whose clutch fills slowly.',
        why: (p: { slowest: string }) =>
          `It is the slowest to stop its turbine, ${p.slowest} after selection. But its driver waits. At a standstill with the throttle shut the ratio check does not run. Only the engagement check looks then, and its time was left alone.`,
      },
    },
    runLabel: 'Halve the time',
  },
  verdicts: {
    passes: 'passes',
    'false-alarm': 'false alarm',
    caught: 'caught',
    'missed-fault': 'missed fault',
  },
  says: (p: { recording: string; verdict: string }) => `${p.recording}: ${p.verdict}.`,
  falseAlarm: (p: { recording: string }) => `False alarm: ${p.recording}.`,
  noFalseAlarm: 'No healthy recording fails a check.',
  failed: {
    none: 'No check fails.',
    engagement: {
      code: (p: Stored) => `Engagement check fails after ${p.after}, code after ${p.code}.`,
      noCode: (p: After) => `Engagement check fails after ${p.after}, no code.`,
    },
    ratio: {
      code: (p: Stored) => `Ratio check fails after ${p.after}, code after ${p.code}.`,
      noCode: (p: After) => `Ratio check fails after ${p.after}, no code.`,
    },
  },
  caught: (p: { caught: string; faulty: string }) => `Faults caught: ${p.caught} of ${p.faulty}.`,
  falseAlarms: (p: { alarms: string; healthy: string }) =>
    `False alarms: ${p.alarms} of ${p.healthy}.`,
  chart: {
    name: 'Slip as seen',
    time: 'Time',
    slip: 'Slip, as seen',
    takeaway: (p: { recording: string; select: string }) =>
      `${p.recording}. Drive selected at ${p.select}.`,
    limitLine: 'limit',
    slipLine: 'slip seen',
    check: 'checked here',
    controller: 'Controller',
  },
  table: {
    name: 'All recordings under these limits',
    recording: 'Recording',
    failed: 'First failed check, after selection',
    verdict: 'Verdict',
  },
  worst: {
    over: 'Longest healthy slip over this limit',
    longer: 'the time must be longer',
    stop: 'Slowest healthy turbine stop',
    later: 'the engagement check must come later',
  },
  made: 'A recording is made once, with a controller that never acts, in the training transmission. It goes on as it was, whatever the controller decides. So it cannot show what raised pressure would have done. The recordings and the limits are invented.',
  states: {
    name: 'The controller’s states.',
    end: 'Filled in: where this recording ends. Slide along the chart above to follow it.',
    cursor: 'Filled in: the state where you are on the chart.',
    inWords: 'The diagram in words',
  },
};
