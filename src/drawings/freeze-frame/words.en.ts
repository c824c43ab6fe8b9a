/** A line of the frame, and what it is good for. A label of two lines is a list of two. */
export const words = {
  title: 'What a freeze frame keeps, and what it does not',
  trace: {
    engine: 'engine',
    turbine: 'turbine',
    output: 'output',
    drive: 'Drive',
    stored: 'code stored',
  },
  head: ['*Freeze frame: one instant'],
  rows: [
    { keeps: ['Fluid', 'temperature'], serves: ['The degrees to', 'drive to'] },
    { keeps: ['Gear asked for,', 'range'], serves: ['Which ratio the', 'sum was done with'] },
    { keeps: ['Engine, turbine,', 'output'], serves: ['Free, dragged, or', 'stuck at a floor?'] },
    { keeps: ['Time, throttle'], serves: ['At once, or only', 'under load'] },
    { keeps: ['Pressure', 'commanded'], serves: ['What was asked for,', 'not what arrived'] },
  ],
  missing: {
    keeps: ['Pressure in', 'the clutch'],
    serves: ['In no frame: that', 'takes a reading'],
  },
  describe:
    'Above, a small trace with no scale: Drive is selected, the turbine is dragged down part of the way, and with the throttle it climbs after the engine while the output hardly turns. A line marks the instant when the code was stored. Below it the freeze frame as a card, with what each line is good for. Fluid temperature: the degrees to drive to. Gear asked for and range: which ratio the sum was done with. Engine, turbine and output: free, dragged, or stuck at a floor. Time and throttle: at once, or only under load. Pressure commanded: what was asked for, not what arrived. Outside the card, hatched: the pressure in the clutch is in no frame, and takes a reading.',
};
