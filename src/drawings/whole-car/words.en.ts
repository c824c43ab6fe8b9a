import { words as parts } from '../parts/words.en.ts';

export const words = {
  title: (p: { temp: string }) => `The car at ${p.temp}, from pump to wheels`,
  engine: 'Engine',
  turbine: 'Turbine',
  wheels: 'Wheels',
  wanted: (p: { pressure: string }) => `wanted ${p.pressure}`,
  sump: {
    cold: (p: { temp: string }) => `Cold: ${p.temp}`,
    hot: (p: { temp: string }) => `Hot: ${p.temp}`,
  },
  grip: { released: 'released', slips: parts.slips, holds: parts.holds },
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
  does: { released: 'is released', slips: parts.slips, holds: parts.holds },
  /** What its controller does in the example. */
  example: 'watches slip',
};
