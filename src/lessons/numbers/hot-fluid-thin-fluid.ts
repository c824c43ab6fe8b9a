import { makeCar } from '../../car/index.ts';
import { fluidClasses, pumpFlow, revPerSecond, viscosityIndex } from '../../engine/index.ts';
import { density } from '../../quantity/part-quantities.ts';
import { dynamicViscosity, flow, kinematicViscosity, times } from '../../quantity/quantities.ts';
import { fluidState, given, index, type EngineNumbers } from './entry.ts';

const kv = (tempC: number, name?: keyof typeof fluidClasses) => ({
  value: fluidState(tempC, name).kinematic * 1e6,
  quantity: kinematicViscosity,
  what: `kinematic viscosity of the ${name ?? 'low-viscosity'} fluid at ${tempC} °C`,
});
const mu = (tempC: number) => ({
  value: fluidState(tempC).dynamic * 1e3,
  quantity: dynamicViscosity,
  what: `dynamic viscosity of the low-viscosity fluid at ${tempC} °C`,
});
const vi = (name: keyof typeof fluidClasses) =>
  index(
    viscosityIndex(fluidClasses[name].kv40CSt, fluidClasses[name].kv100CSt),
    `viscosity index of the ${name} fluid`,
  );
/** What a worn pump slips at idle and 600 kPa [L/min]. */
const slip = (tempC: number) => {
  const { pump, drive } = makeCar({ faults: { pumpWear: { severity: 0.11 } } }).plant;
  const at = { speed: revPerSecond(drive.idleRpm), dynamic: fluidState(tempC).dynamic };
  const lost = pumpFlow(pump, { ...at, pressure: 0 }) - pumpFlow(pump, { ...at, pressure: 600e3 });
  return {
    value: lost * 60000,
    quantity: flow,
    what: `slip of a part-worn pump at idle, ${tempC} °C`,
  };
};

export const hotFluidNumbers: EngineNumbers = {
  // 150 °F, as the source has it.
  'burns-in-two-seconds': given((150 - 32) / 1.8),
  'low-kv-20': kv(20),
  'low-kv-40': kv(40),
  'low-kv-60': kv(60),
  'low-kv-100': kv(100),
  'low-kv-minus-20': kv(-20),
  'standard-kv-40': kv(40, 'standard'),
  'standard-kv-100': kv(100, 'standard'),
  'standard-kv-20': kv(20, 'standard'),
  'ultra-kv-40': kv(40, 'ultra-low'),
  'ultra-kv-100': kv(100, 'ultra-low'),
  'low-mu-20': mu(20),
  'low-mu-60': mu(60),
  'low-mu-100': mu(100),
  'thinner-20-to-100': {
    value: fluidState(20).dynamic / fluidState(100).dynamic,
    quantity: times,
    what: 'how many times thinner, by dynamic viscosity, from 20 to 100 °C',
  },
  'thinner-20-to-60': {
    value: fluidState(20).dynamic / fluidState(60).dynamic,
    quantity: times,
    what: 'how many times thinner, by dynamic viscosity, from 20 to 60 °C',
  },
  'thinner-60-to-100': {
    value: fluidState(60).dynamic / fluidState(100).dynamic,
    quantity: times,
    what: 'how many times thinner, by dynamic viscosity, from 60 to 100 °C',
  },
  'standard-over-low-100': {
    value: fluidState(100, 'standard').dynamic / fluidState(100).dynamic,
    quantity: times,
    what: 'dynamic viscosity of the standard fluid over the low-viscosity one at 100 °C',
  },
  'vi-standard': vi('standard'),
  'vi-low': vi('low-viscosity'),
  'vi-ultra': vi('ultra-low'),
  'low-density-20': { value: fluidState(20).density, quantity: density, what: 'density at 20 °C' },
  'low-density-100': {
    value: fluidState(100).density,
    quantity: density,
    what: 'density at 100 °C',
  },
  'worn-pump-slip-20': slip(20),
  'worn-pump-slip-100': slip(100),
};
