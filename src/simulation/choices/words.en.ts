export const words = {
  temperature: 'Fluid temperature',
  temperatureAxis: 'Temperature',
  crack: 'Crack in the transfer seal',
  fluidClass: 'Fluid class',
  fluid: (p: { name: string; at40: string; at100: string }) =>
    `${p.name}, ${p.at40} and ${p.at100}`,
  circuit: 'Circuit',
  throughSeal: 'through the transfer seal',
  pastSeal: 'another way around',
  testPoint: 'What the controller commands',
  testPoints: { idle: 'Idle', load: 'Load' },
  commands: (p: { line: string; clutch: string }) => `line ${p.line}, clutch ${p.clutch}`,
};
