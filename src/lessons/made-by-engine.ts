import { readingsOf } from '../question-cases/index.ts';
import type { Made } from '../quiz/resolve.ts';
import { chartNamed } from './chart-named.ts';

/** What the engine makes for questions besides numbers. */
export const madeByEngine: Made = { chart: chartNamed, readings: readingsOf };
