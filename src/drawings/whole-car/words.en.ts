export const words = {
  title: (p: { temp: string }) => `The car at ${p.temp}, from pump to wheels`,
  engine: 'Engine',
  turbine: 'Turbine',
  wheels: 'Wheels',
  pump: 'Pump',
  line: (p: { pressure: string }) => `Line ${p.pressure}`,
  clutch: (p: { pressure: string }) => `Clutch ${p.pressure}`,
  wanted: (p: { pressure: string }) => `wanted ${p.pressure}`,
  sump: {
    cold: (p: { temp: string }) => `Cold: ${p.temp}`,
    hot: (p: { temp: string }) => `Hot: ${p.temp}`,
  },
  grip: { released: 'released', slips: 'slips', holds: 'holds' },
  describe: (p: {
    fluid: string;
    engine: string;
    turbine: string;
    wheels: string;
    line: string;
    clutch: string;
    wanted: string;
    leak: string;
    grip: string;
    controller: string;
  }) =>
    `Fluid ${p.fluid}. Engine ${p.engine}, turbine ${p.turbine}, wheels ${p.wheels}. Line ${p.line}, clutch ${p.clutch} where ${p.wanted} is wanted; the circuit leaks ${p.leak}. The clutch ${p.grip}. Controller: ${p.controller}.`,
  does: { released: 'is released', slips: 'slips', holds: 'holds' },
};
