export const words = {
  noValue: 'no value',
  /** What the cursor says at one stop: "At 80 °C: healthy 620 kPa, cracked 340 kPa." */
  at: (place: string, values: string) => `At ${place}: ${values}.`,
  noPoint: 'No point chosen. Arrow keys read the values.',
  read: (name: string) => `Read values: ${name}`,
  /** The fold of a table of states. */
  events: 'What happened',
  event: 'Event',
  from: 'From',
  to: 'To',
  state: 'State',
  where: 'Where',
  missing: (amount: string) => `The parts miss the whole by ${amount}.`,
  readMap: (name: string) => `Read the map: ${name}. Arrow keys move.`,
  setFromMap: (name: string) => `Read the map: ${name}. Arrow keys move, Enter sets the controls.`,
  eachState: (name: string, axis: string) => `${name}. ${axis} for each state.`,
  axisIn: (axis: string, unit: string) => `${axis} in ${unit}`,
  nowhere: 'nowhere',
  range: (low: string, high: string) => `${low} to ${high}`,
};
