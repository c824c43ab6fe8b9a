/** What the engine makes of a sheet. */
import { words as names } from '../../car/names/words.en.ts';

export const words = {
  title: 'What the model makes of it',
  how: 'The healthy car of this sheet, nothing worn. If these are far from what the maker prints, a number above is wrong or an assumed one does not suit.',
  from: (p: { yours: string; assumed: string }): string =>
    p.yours === '0'
      ? `You have typed no number yet: all ${p.assumed} are the training transmission’s.`
      : `From your numbers: ${p.yours} typed, ${p.assumed} assumed.`,
  needsNumber: (label: string) => `Nothing is worked out: ${label} needs a number.`,
  needsLook: (label: string) => `Nothing is worked out: ${label} cannot be right.`,
  plannerWaits: 'The planner waits for it too.',
  goTo: (label: string) => `Mend it: ${label}`,
  working: 'Working it out.',
  failed:
    'The model does not settle on these numbers. Look for one that is ten times too large or too small.',
  stopped: 'The browser stopped the work. Change a number, or load the page again.',
  pressures: 'Pressure at each tap',
  tap: 'Tap',
  tests: {
    'cold-idle': (at: string) => `Idle, ${at}`,
    'hot-idle': (at: string) => `Idle, ${at}`,
    'cold-load': (at: string) => `Load, ${at}`,
    'hot-load': (at: string) => `Load, ${at}`,
  },
  wanted: (p: { reads: string; wanted: string }) => `${p.reads} of ${p.wanted}`,
  taps: { line: 'Line', ...names.circuits },
  times: 'From selection until the turbine stands',
  range: 'Range',
  ranges: { drive: names.ranges.drive, reverse: names.ranges.reverse },
  never: 'never',
  torques: 'Torque that each clutch holds under load',
  clutch: 'Clutch',
  gives: (p: { load: string; loadRpm: string; stall: string; stallRpm: string }) =>
    `The converter gives ${p.load} at the ${p.loadRpm} of the load test and ${p.stall} at a stall of ${p.stallRpm}, with the turbine standing.`,
  remarks: 'Look at these again',
  noRemarks: 'Nothing on it speaks against itself.',
  remark: {
    gears: (p: { first: string; third: string }) =>
      `First gear, ${p.first}, is not shorter than third, ${p.third}. Look whether the two are swapped.`,
    loadSpeed: (p: { idle: string; load: string }) =>
      `The test under load is at ${p.load}, which is no faster than idle at ${p.idle}.`,
    lineFalls: (p: { idle: string; load: string }) =>
      `The line has more at idle, ${p.idle}, than under load, ${p.load}. Charts have it the other way around.`,
    spare: (p: { spare: string; fill: string }) =>
      `There is more fluid above the pick-up, ${p.spare}, than in the whole transmission, ${p.fill}.`,
    idleApart: (p: { own: string; tested: string }) =>
      `It idles at ${p.own}. The planner works out its tests at idle for ${p.tested}, so hold that speed when you take them, or expect pressures to differ where the pump is short.`,
    loadApart: (p: { own: string; tested: string }) =>
      `Your test under load is at ${p.own}. The planner works out its tests under load for ${p.tested}: take them at that speed.`,
    short: (p: { tap: string; test: string; reads: string; wanted: string }) =>
      `Even healthy, ${p.tap} has ${p.reads} of the ${p.wanted} commanded (${p.test}). The pump is too small for the gaps on this sheet, or a feed hole is.`,
    stall: (p: { range: string; torque: string; needs: string; most: string }) =>
      `${p.range} cannot hold the stall torque of ${p.torque} even when healthy: that takes ${p.needs}, and the most commanded is ${p.most}. Look at piston area, faces, radius and the converter.`,
    neverStops: (p: { range: string; warm: string }) =>
      `The turbine never stops in ${p.range} ${p.warm}, even when healthy.`,
    warm: { cold: 'cold', hot: 'hot' },
  },
};
