import type { FaultId } from '../../engine/index.ts';

export const words = {
  fault: 'Fault',
  /** What the trade calls each; the same words as on the model page. */
  names: {
    transferSeal: 'Split transfer seal',
    sealingRings: 'Worn sealing rings',
    pistonSeal: 'Cut piston seal',
    pumpWear: 'Worn pump',
    regulatorBore: 'Worn regulator bore',
    pressureControl: 'Pressure control off',
    filter: 'Restricted filter',
    lowFluid: 'Low fluid',
    thinFluid: 'Worn-out fluid',
    feedRestriction: 'Restricted feed',
    openPort: 'Plug or check ball missing',
    frictionWear: 'Worn friction',
    turbineSensor: 'False turbine sensor',
  } satisfies Record<FaultId, string>,
  severity: 'How bad the fault is',
  healthy: 'healthy',
  worst: 'the worst there is',
  between: 'of the worst there is',
};
