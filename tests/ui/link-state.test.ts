import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  defaultValues,
  LONGEST_LINK,
  parseLink,
  printLink,
  type LinkSchema,
  type LinkValues,
} from '../../src/ui/link-state.ts';
import { schemaProblems } from './schema-problems.ts';

const schema: LinkSchema = {
  id: 'clutch',
  version: 2,
  controls: [
    {
      kind: 'number',
      key: 'temp',
      label: 'Temperature',
      min: -30,
      max: 140,
      step: 5,
      default: 20,
      say: (v) => `${v} °C`,
    },
    { kind: 'number', key: 'crack', label: 'Crack', min: 0, max: 0.6, step: 0.01, default: 0.25 },
    {
      kind: 'choice',
      key: 'fluid',
      label: 'Fluid',
      options: ['standard', 'low-viscosity'],
      default: 'standard',
    },
    { kind: 'flag', key: 'open', label: 'Seal', default: false },
  ],
};

const inRange = (values: LinkValues): void => {
  expect(Object.keys(values).sort()).toEqual(['crack', 'fluid', 'open', 'temp']);
  expect(values['temp']).toBeGreaterThanOrEqual(-30);
  expect(values['temp']).toBeLessThanOrEqual(140);
  expect(values['crack']).toBeGreaterThanOrEqual(0);
  expect(values['crack']).toBeLessThanOrEqual(0.6);
  expect(['standard', 'low-viscosity']).toContain(values['fluid']);
  expect(values['open']).toBeTypeOf('boolean');
};

const anyValues = fc.record({
  temp: fc.double({ min: -30, max: 140, noNaN: true }),
  crack: fc.double({ min: 0, max: 0.6, noNaN: true }),
  fluid: fc.constantFrom('standard', 'low-viscosity'),
  open: fc.boolean(),
});

describe('a state in a link', () => {
  it('is legible', () => {
    const values = { temp: -10, crack: 0.16, fluid: 'low-viscosity', open: true };
    expect(printLink(schema, values)).toBe(
      '?clutch=2~temp.-10~crack.0.16~fluid.low-viscosity~open.yes',
    );
  });
  it('reads back as it was printed, silently', () => {
    fc.assert(
      fc.property(anyValues, (values) => {
        const { present, values: back, notes } = parseLink(schema, printLink(schema, values));
        expect(present).toBe(true);
        expect(back).toEqual({ ...values, temp: values.temp + 0, crack: values.crack + 0 });
        expect(notes).toEqual([]);
      }),
      { numRuns: 1000 },
    );
  });
  it('needs no escaping and is never too long', () => {
    fc.assert(
      fc.property(anyValues, fc.string({ maxLength: 3000 }), (values, search) => {
        expect(printLink(schema, values)).toMatch(/^\?[A-Za-z0-9=~._-]+$/u);
        expect(printLink(schema, values, search).length).toBeLessThanOrEqual(LONGEST_LINK);
      }),
    );
  });
  it('leaves other simulations on the page alone', () => {
    const values = defaultValues(schema);
    const search = printLink(schema, values, '?fluid=1~t.5&clutch=1~temp.3');
    expect(search.startsWith('?fluid=1~t.5&clutch=2~')).toBe(true);
    expect(parseLink({ ...schema, id: 'other' }, search).present).toBe(false);
  });
  it('holds in range whatever values are handed in to print', () => {
    const search = printLink(schema, { temp: Number.NaN, crack: 9e99, fluid: 'x', open: 3 });
    expect(parseLink(schema, search).values).toEqual({
      temp: 20,
      crack: 0.6,
      fluid: 'standard',
      open: false,
    });
  });
});

describe('a link from anywhere', () => {
  it('never throws and always lands in range', () => {
    const piece = fc.oneof(
      fc.string({ unit: 'binary' }),
      fc.constantFrom(
        '~',
        '.',
        '&',
        '=',
        '%',
        '%E0%A4',
        'clutch',
        'temp.',
        'crack.1e999',
        'fluid.',
        'open.',
        '2~',
        '__proto__.1',
        '-',
        'NaN',
        'Infinity',
      ),
      fc.double().map(String),
    );
    const search = fc.oneof(
      fc.array(piece, { maxLength: 30 }).map((parts) => `?${parts.join('')}`),
      fc.array(piece, { maxLength: 30 }).map((parts) => `?clutch=2~${parts.join('~')}`),
    );
    fc.assert(
      fc.property(search, (text) => inRange(parseLink(schema, text).values)),
      { numRuns: 1500 },
    );
  });
  it('clamps with a sentence that names the range', () => {
    const { values, notes } = parseLink(schema, '?clutch=2~temp.900');
    expect(values['temp']).toBe(140);
    expect(notes).toEqual([
      'Temperature: the link asked for 900 °C. It is set to 140 °C; the range is -30 °C to 140 °C.',
    ]);
  });
  it.each(['?clutch=3~temp.50', '?clutch=', '?clutch=~temp.50', '?clutch=2.0~temp.50'])(
    '%s is another version: defaults, and says so',
    (search) => {
      const { present, values, notes } = parseLink(schema, search);
      expect(present).toBe(true);
      expect(values).toEqual(defaultValues(schema));
      expect(notes).toHaveLength(1);
      expect(notes[0]).toContain('another version');
    },
  );
  it('tells of garbage, of strangers, and of unknown choices', () => {
    const { values, notes } = parseLink(schema, '?clutch=2~temp.abc~fluid.oil~zzz.1~temp.5');
    expect(values).toEqual(defaultValues(schema));
    expect(notes).toHaveLength(3);
  });
  it('longer than is read gives the usual values and says so, whatever the length', () => {
    const note = 'The link is longer than 2000 characters. The usual values are set.';
    for (const length of [LONGEST_LINK + 1, 4 * LONGEST_LINK, 4 * LONGEST_LINK + 1, 1e5]) {
      const rest = '&other='.padEnd(length, 'x');
      for (const search of [`?clutch=2~temp.50${rest}`, `?${rest.slice(1)}&clutch=2~temp.50`]) {
        expect(parseLink(schema, search)).toEqual({
          present: true,
          values: defaultValues(schema),
          notes: [note],
        });
      }
      // Of another simulation: none of this one's business.
      expect(parseLink(schema, `?my-clutch=1${rest}`)).toEqual({
        present: false,
        values: defaultValues(schema),
        notes: [],
      });
    }
    const longest = '?clutch=2~temp.50&other='.padEnd(LONGEST_LINK, 'x');
    expect(parseLink(schema, longest)).toMatchObject({ values: { temp: 50 }, notes: [] });
  });
  it('of nothing is no link at all', () => {
    expect(parseLink(schema, '')).toEqual({
      present: false,
      values: defaultValues(schema),
      notes: [],
    });
  });
});

it('a schema that cannot work is named', () => {
  expect(schemaProblems(schema)).toEqual([]);
  const broken: LinkSchema = {
    id: 'a b',
    version: 1.5,
    controls: [
      { kind: 'number', key: 'x', label: 'x', min: 2, max: 1, step: 1, default: 3 },
      { kind: 'choice', key: 'x', label: 'x', options: ['a~b'], default: 'c' },
    ],
  };
  expect(schemaProblems(broken)).toHaveLength(6);
});
