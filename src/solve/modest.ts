import { cut } from './shown.ts';

/** No request goes deeper than four: request, transmission, clutches, one clutch. */
const DEEPEST = 8;
/** A fluid at every tenth of a degree takes 1,700. */
const MOST_VALUES = 20_000;

/**
 * What is out of all proportion about a request, before anything recurses into it: a sentence and the key it stands
 * under. Undefined for a request that can be read at leisure.
 */
export function immodest(
  request: object,
): { readonly error: string; readonly path: string } | undefined {
  let values = 0;
  for (const [key, top] of Object.entries(request)) {
    const path = cut(key);
    let level: unknown[] = [top];
    // Level by level and not by recursion, which a few thousand brackets would end.
    for (let depth = 1; level.length > 0; depth += 1) {
      if (depth > DEEPEST) {
        return {
          error: `${path} is nested more than ${DEEPEST} deep; no request needs that.`,
          path,
        };
      }
      values += level.length;
      if (values > MOST_VALUES) {
        return {
          error: `The request holds more than ${MOST_VALUES} values; ask in several requests.`,
          path,
        };
      }
      level = level.flatMap((value): unknown[] =>
        typeof value === 'object' && value !== null ? Object.values(value) : [],
      );
    }
  }
  return undefined;
}
