/** Everything that an address can say. */
import * as fc from 'fast-check';
import { expect, vi } from 'vitest';
import { LEVELS, MOST_SEED, TRANSMISSIONS } from '../../src/cases/made-key.ts';
import { addressFor, longest, wordsIn } from '../../src/layouts/search-address.ts';
import {
  countSentence,
  pieces,
  putRight,
  singleWords,
  unitHint,
} from '../../src/layouts/search-words.ts';
import { readAddress as readCase } from '../../src/practice/case-address.ts';
import { readAddress as readSheet, SHOWN } from '../../src/question-sheet/address.ts';
import { readChoice } from '../../src/question-sheet/choice.ts';
import { hashOf, readView } from '../../src/rounds/rehearsal/view.ts';
import { currentValues } from '../../src/simulation/current-values.ts';
import { linkSchema } from '../../src/simulation/later/link-schema.ts';
import { readPlace } from '../../src/simulation/later/place.ts';
import {
  LONGEST_LINK,
  parseLink,
  printLink,
  type LinkControl,
  type LinkValues,
} from '../../src/ui/link-state.ts';
import { areas } from '../question-sheet/areas.ts';
import { everySimulation } from '../simulation/every-simulation.ts';
import { expectPlain, expectSentence, fuzz, growth, leaveFigures } from './kit.ts';

leaveFigures('links');

/** A half of a pair travels as the sign for what cannot be read. */
const whole = (text: string): string => text.replaceAll(/\p{Surrogate}/gu, '\ufffd');

const junk = fc.oneof(
  fc.string({ unit: 'binary', maxLength: 12 }),
  fc.double().map(String),
  fc.constantFrom(
    ...[
      '',
      '~',
      '.',
      '&',
      '=',
      '%',
      '%E0%A4',
      '+',
      '-',
      '-0',
      '1e999',
      '1e-999',
      'NaN',
      'Infinity',
    ],
    ...[
      '0x10',
      '１２',
      '__proto__',
      'constructor',
      'toString',
      '<b>',
      'yes',
      'no',
      '\u0000',
      '\ud800',
    ],
  ),
);

const sims = everySimulation.map(({ sim, makeModel }) => {
  const defaults = currentValues(sim, makeModel());
  return { sim, defaults, schema: linkSchema(sim, defaults) };
});

function expectInRange(controls: readonly LinkControl[], values: LinkValues): void {
  expect(Object.keys(values)).toHaveLength(controls.length);
  for (const control of controls) {
    const value = values[control.key];
    if (control.kind === 'number') {
      const good = typeof value === 'number' && value >= control.min && value <= control.max;
      if (!good) throw new Error(`${control.key} is ${String(value)}`);
    } else if (control.kind === 'choice') expect(control.options).toContain(value);
    else expect(typeof value).toBe('boolean');
  }
}

/** Links as this site writes them, with what nobody would write in between. */
const simLink = fc.constantFrom(...sims).chain((one) => {
  const { id, version, controls } = one.schema;
  const key = fc.oneof(
    { arbitrary: fc.constantFrom(...controls.map((control) => control.key)), weight: 4 },
    { arbitrary: junk, weight: 1 },
  );
  const value = fc.oneof(
    junk,
    fc.constantFrom(
      ...controls.flatMap((control) =>
        control.kind === 'choice'
          ? control.options
          : control.kind === 'number'
            ? [String(control.min), String(control.max), String(control.max * 1.01 + 1)]
            : ['yes', 'no'],
      ),
    ),
  );
  const pair = fc.tuple(key, value).map(([k, v]) => `${k}.${v}`);
  const others = fc.array(junk, { maxLength: 3 }).map((all) => all.join('&'));
  return fc
    .tuple(
      fc.constantFrom(String(version), String(version), String(version + 1), '', '-1'),
      fc.array(fc.oneof({ arbitrary: pair, weight: 5 }, { arbitrary: junk, weight: 1 }), {
        maxLength: controls.length + 3,
      }),
      others,
      fc.boolean(),
    )
    .map(([v, pairs, rest, escaped]) => {
      const state = [v, ...pairs].join('~');
      const own = `${id}=${escaped ? encodeURIComponent(whole(state)) : state}`;
      return { one, search: `?${[rest, own].filter((part) => part !== '').join('&')}` };
    });
});

fuzz('Links to a simulation', 80_000, simLink, ({ one: { schema }, search }) => {
  const { values, notes } = parseLink(schema, search);
  expectInRange(schema.controls, values);
  expectPlain(values);
  for (const note of notes) expectSentence(note);
  // What was understood is what a new link says.
  const printed = printLink(schema, values);
  expect(printed.length).toBeLessThanOrEqual(LONGEST_LINK);
  expect(parseLink(schema, printed)).toEqual({ present: true, values, notes: [] });
});

const state = fc.oneof(
  fc.jsonValue({ maxDepth: 3 }),
  fc.record(
    {
      stage: fc.oneof(fc.constantFrom('predict', 'run', 'compare', 'tasks', 'own'), junk),
      search: fc.oneof(fc.string(), fc.constant(7)),
      outcome: junk,
      prediction: junk,
      confidence: fc.oneof(fc.constantFrom('certain', 'guess'), junk),
      task: fc.oneof(fc.double(), junk),
      done: fc.oneof(fc.array(fc.boolean()), junk, fc.constant(null)),
      hint: fc.oneof(fc.boolean(), junk),
    },
    { requiredKeys: [] },
  ),
);
fuzz(
  'Places in a simulation that the tab remembers',
  8000,
  fc.tuple(fc.constantFrom(...sims), state),
  ([{ sim, defaults, schema }, kept]) => {
    vi.stubGlobal('history', { state: { simulations: { [sim.id]: kept } } });
    const place = readPlace(sim, defaults, 3);
    vi.unstubAllGlobals();
    if (place === null) return;
    expectInRange(schema.controls, place.values as LinkValues);
    expect(place.state.task).toBeLessThan(3);
    expect(place.state.done).toHaveLength(3);
    expectPlain(place);
  },
);

/** A search string of names that a page reads, and names that it does not. */
const query = (names: readonly string[], values: readonly string[]): fc.Arbitrary<string> =>
  fc
    .array(
      fc.tuple(
        fc.oneof(
          { arbitrary: fc.constantFrom(...names), weight: 5 },
          { arbitrary: junk, weight: 1 },
        ),
        fc.oneof(junk, fc.constantFrom(...values), fc.integer().map(String)),
      ),
      { maxLength: 8 },
    )
    .map((all) => `?${all.map(([name, value]) => `${name}=${value}`).join('&')}`);

fuzz(
  'Links to a practice case',
  12_000,
  query(['case', 'number', 'level', 'on'], ['1', '3', 'training', 'second', '99999', '100000']),
  (search) => {
    const asked = readCase(search);
    if (asked.kind === 'written') expect(typeof asked.id).toBe('string');
    if (asked.kind !== 'made') return;
    const { seed, level, on } = asked.key;
    expect(Number.isInteger(seed) && seed >= 1 && seed <= MOST_SEED).toBe(true);
    expect(LEVELS).toContain(level);
    expect(TRANSMISSIONS).toContain(on);
  },
);

fuzz(
  'Links to a question sheet',
  12_000,
  query(
    ['lessons', 'count', 'units', 'seed', 'version', 'show'],
    ['all', 'one.two', 'one.gone', 'us', 'si', 'a', 'key', '7', 'bay-3', '7k2m9q'],
  ),
  (search) => {
    const read = readSheet(search, areas, 'us');
    if (read === undefined) return;
    expect(SHOWN).toContain(read.shown);
    expect(['us', 'si']).toContain(read.typed.units);
    const choice = readChoice(read.typed, areas);
    if ('faults' in choice) for (const fault of Object.values(choice.faults)) expectSentence(fault);
    else expect(choice.count).toBeLessThanOrEqual(1000);
  },
);

fuzz(
  'Links into a rehearsal',
  4000,
  fc.oneof(
    junk,
    fc.constantFrom('#question', '#all'),
    fc.nat().map((n) => `#result-${n}`),
  ),
  (hash) => {
    const view = readView(hash);
    expect(readView(hashOf(view))).toEqual(view);
    if (view.at === 'result') expect(Number.isSafeInteger(view.begun)).toBe(true);
  },
);

fuzz('Links to a search', 8000, query(['q'], ['psi', '35 kPa', 'seal hot', 'a b c']), (search) => {
  const words = wordsIn(search);
  expect(words.length).toBeLessThanOrEqual(longest);
  expect(wordsIn(new URL(addressFor(words), 'https://x').search)).toBe(whole(words).trim());
  const fates = words.split(' ').map((word) => ({ word, standing: 'there' as const, close: [] }));
  expect(singleWords(fates).length).toBeLessThanOrEqual(6);
  expect(putRight(fates)).toBeNull();
  const hint = unitHint(words, 'us');
  if (hint !== null) expectSentence(hint);
  // As text, whatever it holds: no piece of an excerpt is markup.
  expectPlain(pieces(words));
  if (words !== '')
    expect(countSentence(words, { lesson: 0, glossary: 0, other: 0 }, [])).not.toBe('');
});

const [first] = sims;
if (first === undefined) throw new Error('There are no simulations.');
growth('The longest link', 500, {
  simulation: (n) => () =>
    void parseLink(first.schema, `?${first.schema.id}=1~${'a.1~'.repeat(n * 50)}`),
  case: (n) => () => void readCase(`?${'number=1&'.repeat(n * 20)}`),
  sheet: (n) => () => void readSheet(`?seed=a&lessons=${'one.'.repeat(n * 50)}`, areas, 'us'),
  search: (n) => () => void wordsIn(`?q=${' a'.repeat(n * 100)}`),
});
