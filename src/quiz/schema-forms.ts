/** The kinds in which a person arranges, pairs or points, instead of choosing from a list. */
import { z } from 'zod';
import { arrivals } from './case-minutes.ts';
import { EXTRA, START } from './asked.ts';
import { common, id, list, optionShape, strict, words } from './schema-parts.ts';

const step = strict('A step', {
  id: id('The id of a step'),
  text: words('The text of a step'),
  /** Why it stands where it stands, or what is right or wrong with it. */
  why: words('The explanation ("why") of a step', 15),
});

interface Named {
  readonly id: string;
}

const ids = (things: readonly Named[]): readonly string[] => things.map((thing) => thing.id);
const quoted = (names: readonly string[]): string => names.map((name) => `"${name}"`).join(', ');

const fault = strict('A fault', {
  severity: z
    .number({ error: 'The "severity" of a fault is a number from 0 to 1.' })
    .min(0, { error: 'The "severity" of a fault is 0 at least.' })
    .max(1, { error: 'The "severity" of a fault is 1 at most.' }),
  circuit: z.string().optional(),
});

export const caseSchema = strict('A question of kind "case"', {
  ...common,
  kind: z.literal('case'),
  /** How warm it comes in; cold where nothing is said. */
  arrives: z.enum(arrivals, { error: '"arrives" is "frost", "cold" or "hot".' }).optional(),
  readings: list(
    '"readings"',
    strict('A reading', {
      /** Id of a test in src/diagnosis: its minutes, and what it reads, come from there. */
      test: words('The "test" of a reading'),
      why: words('The explanation ("why") of a reading', 15),
    }),
  )
    .min(3, { error: 'At least three readings to choose from.' })
    .max(7, { error: 'At most seven readings.' }),
  options: list(
    '"options"',
    strict('An option', {
      ...optionShape,
      /** What the car has if this is right; in a wrong one, as bad as this or worse. Nothing in it: healthy. */
      faults: z.record(z.string(), fault, {
        error: '"faults" holds faults of src/engine by name.',
      }),
    }),
  )
    .min(2, { error: 'At least two options.' })
    .max(5, { error: 'At most five options.' }),
}).superRefine(({ options, readings, healthy = false }, context) => {
  const say = (path: (string | number)[], message: string): void => {
    context.addIssue({ code: 'custom', path, message });
  };
  const right = options.filter(({ correct }) => correct);
  if (right.length !== 1)
    say(['options'], `Exactly one option is right, but ${right.length} are marked correct.`);
  const sound = right.some(({ faults }) => Object.keys(faults).length === 0);
  if (right.length === 1 && sound !== healthy)
    say(['options'], 'A case is "healthy": true if, and only if, its right option has no faults.');
  if (new Set(readings.map(({ test }) => test)).size !== readings.length)
    say(['readings'], 'A reading stands there twice.');
});

/** Each id once; says the first that comes again. */
function distinct(things: readonly Named[], what: string): string | undefined {
  const seen = new Set<string>();
  const again = ids(things).find((one) => seen.size === seen.add(one).size);
  return again === undefined ? undefined : `Two ${what} share the id "${again}".`;
}

export const orderSchema = strict('A question of kind "order"', {
  ...common,
  kind: z.literal('order'),
  /** In the right order. */
  steps: list('"steps"', step)
    .min(3, { error: 'At least three steps.' })
    .max(7, { error: 'At most seven steps; five are enough.' }),
  /** Groups of neighbours that may stand in any order among themselves. */
  anyOrder: list(
    '"anyOrder"',
    list('A group in "anyOrder"', id('The id of a step in "anyOrder"')).min(2, {
      error: 'A group in "anyOrder" has two steps or more.',
    }),
  ).optional(),
}).superRefine(({ steps, anyOrder = [] }, context) => {
  const say = (path: (string | number)[], message: string): void => {
    context.addIssue({ code: 'custom', path, message });
  };
  const twice = distinct(steps, 'steps');
  if (twice !== undefined) say(['steps'], twice);
  const known = ids(steps);
  const used = new Set<string>();
  anyOrder.forEach((group, index) => {
    const path = ['anyOrder', index];
    const stray = group.find((one) => !known.includes(one));
    if (stray !== undefined) {
      say(path, `There is no step "${stray}". There are: ${quoted(known)}.`);
      return;
    }
    const again = group.find((one) => used.size === used.add(one).size);
    if (again !== undefined) say(path, `The step "${again}" stands in "anyOrder" twice.`);
    const places = group.map((one) => known.indexOf(one));
    if (Math.max(...places) - Math.min(...places) !== group.length - 1)
      say(path, `The steps ${quoted(group)} must be neighbors to stand in any order.`);
  });
  const longest = Math.max(0, ...anyOrder.map((group) => group.length));
  if (longest === steps.length)
    say(['anyOrder'], 'Every step may stand anywhere: then there is no order to ask for.');
});

export const matchSchema = strict('A question of kind "match"', {
  ...common,
  kind: z.literal('match'),
  pairs: list(
    '"pairs"',
    strict('A pair', {
      id: id('The id of a pair'),
      left: words('The "left" of a pair', 1),
      right: words('The "right" of a pair', 1),
      why: words('The explanation ("why") of a pair', 15),
    }),
  )
    .min(3, { error: 'At least three pairs.' })
    .max(5, { error: 'At most five pairs.' }),
  /** One more on the right, which goes with nothing. */
  extra: strict('The "extra"', {
    text: words('The text of the "extra"', 1),
    why: words('The explanation ("why") of the "extra"', 15),
  }).optional(),
}).superRefine(({ pairs, extra }, context) => {
  const say = (message: string): void => {
    context.addIssue({ code: 'custom', path: ['pairs'], message });
  };
  const twice = distinct(pairs, 'pairs');
  if (twice !== undefined) say(twice);
  if (pairs.some((pair) => pair.id === EXTRA)) say(`A pair cannot have the id "${EXTRA}".`);
  const rights = [...pairs.map(({ right }) => right), ...(extra === undefined ? [] : [extra.text])];
  if (new Set(rights.map((text) => text.toLowerCase())).size !== rights.length)
    say('Two entries on the right read the same.');
  if (new Set(pairs.map(({ left }) => left.toLowerCase())).size !== pairs.length)
    say('Two entries on the left read the same.');
});

export const spotSchema = strict('A question of kind "spot"', {
  ...common,
  kind: z.literal('spot'),
  /** As the job is done or written down, in its order. */
  steps: list('"steps"', step)
    .min(3, { error: 'At least three steps.' })
    .max(7, { error: 'At most seven steps; five are enough.' }),
  /** The id of the step that is wrong or unsafe. */
  unsafe: id('The "unsafe" step').optional(),
  /** What is missing, and after which step; "start" is above the first. */
  missing: strict('The "missing" part', {
    after: list('"after"', id('A place in "after"')).min(1, {
      error: '"after" names the step above the gap, or "start".',
    }),
    text: words('The text of the missing step'),
    why: words('The explanation ("why") of the missing step', 15),
  }).optional(),
}).superRefine(({ steps, unsafe, missing }, context) => {
  const say = (path: (string | number)[], message: string): void => {
    context.addIssue({ code: 'custom', path, message });
  };
  const twice = distinct(steps, 'steps');
  if (twice !== undefined) say(['steps'], twice);
  const known = ids(steps);
  if (known.includes(START)) say(['steps'], `A step cannot have the id "${START}".`);
  if ((unsafe === undefined) === (missing === undefined))
    say([], 'It has either an "unsafe" step or a "missing" one.');
  if (unsafe !== undefined && !known.includes(unsafe))
    say(['unsafe'], `There is no step "${unsafe}". There are: ${quoted(known)}.`);
  const stray = missing?.after.find((one) => one !== START && !known.includes(one));
  if (stray !== undefined)
    say(
      ['missing', 'after'],
      `There is no step "${stray}". There are: ${quoted([START, ...known])}.`,
    );
});
