/** From the sump to the clutch, in the drawings of one circuit, of all of them, and of what is in them. */
export const words = {
  line: 'Line',
  lineAt: (pressure: string) => `Line ${pressure}`,
  clutchAt: (pressure: string) => `Clutch ${pressure}`,
  pump: 'Pump',
  filter: 'Filter',
  regulator: 'Regulator',
  spring: 'Spring',
  sensor: 'Sensor',
  sump: { cold: 'sump, cold fluid', hot: 'sump, hot fluid' },
  /** Where goes what the regulator lets by. In little room only the middle one stands: what a shop can get at. */
  beyond: ['converter, ', 'cooler', ', lube'],
  seal: 'Transfer seal',
  case: 'Case',
};
