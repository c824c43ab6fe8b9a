import type { UnitSystem } from '../quantity/unit-system.ts';

/**
 * While the build draws a picture for paper alone (src/simulation/frame/Ran.tsx), the unit system of that sheet; null at all
 * other times, and always in a browser. Whoever reads it does so behind `import.meta.env.SSR`, so that no page carries it.
 */
export const onPaper: { units: UnitSystem | null } = { units: null };
