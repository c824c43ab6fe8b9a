import { both, DIAL, unit } from './units.ts';

/**
 * Of the International Table: what warms a pound of water by 1 °F, at 4.1868 J for a gram and a kelvin. NIST SP 811 (2008),
 * appendix B.
 */
export const KILOJOULE_PER_BTU = 1.05505585262;

/** What it takes to warm a whole transmission, as a heater's maker tells heat. No other page prints it, so it stands by itself. */
export const heatHeld = both(
  'heat held',
  unit('kJ', 1, DIAL),
  unit('Btu', 1 / KILOJOULE_PER_BTU, DIAL),
);
