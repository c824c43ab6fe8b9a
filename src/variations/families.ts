import { bench } from './bench.ts';
import { circuit } from './circuit.ts';
import { clutch } from './clutch.ts';
import type { Family } from './family.ts';
import { fluid } from './fluid.ts';
import { log } from './log.ts';
import { shop } from './shop.ts';
import { slip } from './slip.ts';

export const families: Readonly<Record<string, Family>> = {
  ...slip,
  ...log,
  ...clutch,
  ...fluid,
  ...circuit,
  ...bench,
  ...shop,
};
