import type { Area } from '../../quiz/rehearsal/blueprint.ts';

const areas: Readonly<Record<Area, string>> = {
  fluid: 'Fluid, leaks, pressure and force',
  circuits: 'Pump, regulator and circuits',
  selection: 'Range selection, Park and safety',
  complaint: 'Complaint, drive and outside checks',
  log: 'Log, codes and slip',
  tests: 'Pressure and bench tests',
  parts: 'Parts, assembly and adaptation',
  proof: 'Proof and the customer',
};

export const words = { areas };
