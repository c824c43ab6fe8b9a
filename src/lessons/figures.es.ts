import Fluid from '../widgets/fluid/index.astro';

export const figures = { Fluid } as const;
