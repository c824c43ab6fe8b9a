import type { Circuit, EngagementEventName, FaultId, FluidClass } from '../engine/index.ts';
import { words as names } from './names/words.en.ts';
import type { Demand } from './need.ts';
import type { ShopTest, Tap, Verdict } from './shop-tests.ts';

/** What the trade calls each thing of the model; with `names` the only place where it is named in print. */
const faults: Record<FaultId, string> = {
  transferSeal: 'Split transfer seal',
  hardLip: 'Hardened piston lip',
  clutchControl: 'Clutch control valve fades hot',
  sealingRings: 'Worn sealing rings',
  pistonSeal: 'Cut piston seal',
  pumpWear: 'Worn pump',
  regulatorBore: 'Worn regulator bore',
  pressureControl: 'Pressure control low',
  filter: 'Restricted filter',
  lowFluid: 'Low fluid level',
  thinFluid: 'Worn-out or wrong fluid',
  feedRestriction: 'Restricted feed, or cable out of adjustment',
  openPort: 'Plug or check ball missing',
  frictionWear: 'Worn friction plates',
  turbineSensor: 'False turbine speed signal',
};

const clutches: Record<Circuit, string> = {
  forward: 'forward clutch',
  reverse: 'reverse clutch',
  high: 'high clutch',
};
const taps: Record<Tap, string> = { line: 'Line', ...names.circuits };

const demands: Record<Demand, string> = {
  standing: 'Standing in gear',
  gentle: 'Gentle take-off',
  firm: 'Firm take-off',
};

const verdicts: Record<Verdict, string> = { ok: 'right', low: 'low', gone: 'too low to hold' };

const shopTests: Record<ShopTest, string> = {
  'cold-idle': 'Cold, idle',
  'cold-load': 'Cold, under load',
  'hot-idle': 'Hot, idle',
  'hot-load': 'Hot, under load',
};

const fluids: Record<FluidClass, string> = {
  standard: 'Standard',
  'low-viscosity': 'Low viscosity',
  'ultra-low': 'Ultra-low viscosity',
};

const events: Record<EngagementEventName, string> = {
  'range selected': 'Range selected',
  'engagement finished': 'Engagement finished',
  'engagement not finished': 'Engagement not finished',
  'pressure raised': 'Pressure raised',
  'code stored': 'Code stored',
  'clutch vented': 'Clutch vented',
  'neutral commanded': 'Neutral commanded',
  'park commanded': 'Park commanded',
  'default gear held': 'One gear held',
  'clutch filled': 'Clutch full',
  'turbine stopped': 'Turbine stopped',
  'brake released': 'Brake released',
};

export const words = {
  ...names,
  trainingTransmission: 'training transmission',
  faults,
  clutches,
  taps,
  demands,
  verdicts,
  shopTests,
  fluids,
  events,
};
