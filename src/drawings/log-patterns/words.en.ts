/** Under each trace what it looks like, then what it means. A label of two lines is a list of two. */
export const words = {
  title: 'Six patterns of turbine speed',
  engine: 'engine',
  patterns: {
    stays: ['*Stays with the engine', 'Clutch holds nothing'],
    late: ['*Falls late, in one sweep', 'Slow fill'],
    part: ['*Falls part way, hangs', 'Clutch drags and slips'],
    climbs: ['*Stops, climbs with gas', 'Clutch holds too little'],
    zero: ['*Zero for one row', 'Sensor or its plug'],
    bumps: ['*Dips with the bumps', 'Harness'],
  },
  describe:
    'Six small traces of turbine speed over time; Drive is selected at the tick on the time line, and the dashed line is engine speed. Stays with the engine: the clutch holds nothing. Falls late, in one sweep: slow fill. Falls part way and hangs there: the clutch drags it down and slips, with some pressure and too little. Stops, then climbs with the throttle: the clutch holds too little. Reads zero for one row and is back: the sensor or its plug. Dips again and again with the bumps of the road: the harness.',
};
export type Pattern = keyof typeof words.patterns;
