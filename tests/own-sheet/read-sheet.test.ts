import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  plantFromSheet,
  secondSheet,
  SHEET_FIELDS,
  training,
  trainingSheet,
} from '../../src/engine/index.ts';
import { ALL_FIELDS, fieldAt, type SheetField } from '../../src/own-sheet/fields.ts';
import { fingerprintOf } from '../../src/own-sheet/fingerprint.ts';
import { readSheet } from '../../src/own-sheet/read-sheet.ts';
import { formatNumber } from '../../src/quantity/print.ts';
import { newSheet, type OwnSheet } from '../../src/storage/sheets/own-sheet.ts';

/** A sheet with these typed. */
function typedIn(fields: Readonly<Record<string, string>>, units: 'us' | 'si' = 'si'): OwnSheet {
  return {
    ...newSheet('a', 1, 'Mine'),
    fields: Object.fromEntries(
      Object.entries(fields).map(([path, text]) => [path, { at: 2, value: { text, units } }]),
    ),
  };
}
const at = (from: object, path: string): unknown =>
  path.split('.').reduce<unknown>((inner, key) => (inner as Record<string, unknown>)[key], from);

test('nothing typed is the training transmission, and nothing of it is yours', () => {
  const { whole, yours, troubles } = readSheet(typedIn({}));
  expect(whole).toEqual({ ...trainingSheet, name: 'Mine' });
  expect([yours, troubles.size]).toEqual([0, 0]);
});

test('a number that cannot be read is neither yours nor assumed', () => {
  const { yours, assumed, of } = readSheet(typedIn({ 'ratios.first': '4', idle_rpm: '700-800' }));
  expect([yours, of - assumed]).toEqual([1, 2]);
});

test('every number of the engine’s sheet can be typed', () => {
  // The seven of a clutch are typed clutch by clutch, but for the two that no two clutches differ in.
  const paths = Object.entries(SHEET_FIELDS).flatMap(([key, value]) =>
    'unit' in value && typeof value.unit === 'string'
      ? [key]
      : Object.keys(value).map((inner) => `${key}.${inner}`),
  );
  const known = new Set(ALL_FIELDS.map(({ path }) => path));
  const missing = paths.filter(
    (path) => !known.has(path) && !known.has(path.replace(/^clutch\./, 'clutches.forward.')),
  );
  expect(missing).toEqual([]);
});

describe.each(['us', 'si'] as const)('typed in %s units', (units) => {
  test('a value inside its range comes onto the sheet, to what the text carries', () => {
    const field = fc.constantFrom(...ALL_FIELDS.filter(({ path }) => !path.startsWith('fluid')));
    fc.assert(
      fc.property(field, fc.integer({ min: 1, max: 999 }), (one: SheetField, share) => {
        const { min, max } = one.range;
        const metric = min + (share / 1000) * (max - min);
        const { factor, zero } = one.quantity[units];
        const { troubles, yours } = readSheet(
          typedIn({ [one.path]: String(Number((metric * factor + zero).toPrecision(9))) }, units),
        );
        expect(yours).toBe(1);
        // It may still not go together with another number; of itself it is right.
        expect([...troubles.values()].filter(({ kind }) => kind === 'typed')).toEqual([]);
      }),
      { numRuns: 400 },
    );
  });

  test.each(ALL_FIELDS.map((field) => [field.path, field] as const))(
    '%s above and below its range is refused there',
    (path, { range: { min, max }, quantity }) => {
      const { factor, zero } = quantity[units];
      const fluid = path.startsWith('fluid.') ? { fluid: 'own' } : {};
      for (const metric of [max * 1.2 + 1, min - 5 - Math.abs(min) * 0.2]) {
        const { whole, troubles } = readSheet(
          typedIn({ ...fluid, [path]: String(metric * factor + zero) }, units),
        );
        expect(troubles.get(path)?.kind, `${metric}`).toBe('typed');
        expect(whole).toBeNull();
      }
    },
  );
});

test('what the second training transmission has, typed, is the second training transmission', () => {
  const fields: Record<string, string> = {};
  for (const { path, per } of ALL_FIELDS) {
    const [, circuit, key] = /^clutches\.(\w+)\.(\w+)$/.exec(path) ?? [];
    const value =
      circuit === undefined
        ? at(secondSheet, path)
        : ((at(secondSheet, path.split('.').slice(0, 2).join('.')) as object | undefined) &&
            at(secondSheet, path)) ||
          at(secondSheet, `clutch.${key}`);
    if (typeof value === 'number') fields[path] = String(value * per);
  }
  fields['seal.circuits'] = 'reverse high';
  fields['applyChart.3'] = 'forward high';
  fields['fluid'] = 'ultra-low';
  const { whole } = readSheet(typedIn(fields));
  const plant = whole && plantFromSheet(whole);
  // A part of the training transmission's is typed in percent to six decimals.
  const rounded = (one: unknown): unknown =>
    JSON.parse(
      JSON.stringify(one, (key, value: unknown) =>
        key === 'name' ? '' : typeof value === 'number' ? Number(value.toPrecision(7)) : value,
      ),
    );
  expect(rounded(plant)).toEqual(rounded(plantFromSheet(secondSheet)));
});

describe('what does not go together', () => {
  test.each([
    ['a clutch above the line', { 'commands.idleLine_kPa': '300' }, 'commands.idleClutch_kPa'],
    ['the least above the most', { 'commands.clutchMost_kPa': '200' }, 'commands.clutchLeast_kPa'],
    ['a spring too strong', { 'clutches.high.spring_N': '9000' }, 'clutches.high.spring_N'],
    ['first without its clutch', { 'applyChart.1': 'high' }, 'applyChart.1'],
    ['a range with no clutch', { 'applyChart.2': '-' }, 'applyChart.2'],
    ['no circuit through the seal', { 'seal.circuits': '-' }, 'seal.circuits'],
    ['a name of no clutch, from a file', { 'applyChart.4': 'rear' }, 'applyChart.4'],
    ['a fluid of no class, from a file', { fluid: 'water' }, 'fluid'],
    ['a fluid that does not thin', { fluid: 'own', 'fluid.kv40_cSt': '5' }, 'fluid.kv100_cSt'],
  ])('%s is refused at its field', (_what, fields, path) => {
    const { whole, troubles } = readSheet(typedIn(fields));
    expect([...troubles.keys()]).toEqual([path]);
    expect(whole).toBeNull();
  });

  test('all of it is told at once', () => {
    const { troubles } = readSheet(
      typedIn({ 'ratios.first': 'four', idle_rpm: '7', 'clutches.high.spring_N': '9000' }),
    );
    expect([...troubles.keys()].sort()).toEqual([
      'clutches.high.spring_N',
      'idle_rpm',
      'ratios.first',
    ]);
  });
});

describe('the fingerprint', () => {
  const of = (fields: Readonly<Record<string, string>>, code = 'c'): string => {
    const { whole } = readSheet(typedIn(fields));
    if (whole === null) throw new Error('no sheet');
    return fingerprintOf(plantFromSheet(whole), code);
  };

  test('is that of the training transmission where all is assumed, whatever it is called', () => {
    expect(of({})).toBe(fingerprintOf(training, 'c'));
  });

  test('changes with every number, and with the code', () => {
    expect(of({}, 'd')).not.toBe(of({}));
    for (const { path, assumed, quantity } of ALL_FIELDS) {
      if (path.startsWith('fluid.')) continue;
      const moved = of({
        [path]: formatNumber(
          assumed * 1.02 + 0.02,
          { ...quantity, si: { ...quantity.si, digits: [[0, 6]] } },
          'si',
        ),
      });
      expect(moved, path).not.toBe(of({}));
    }
    for (const fields of [
      { fluid: 'standard' },
      { fluid: 'own', 'fluid.density15_kgm3': '850' },
      { 'seal.circuits': 'high' },
      { 'applyChart.3': 'forward high' },
    ] as const) {
      expect(of(fields)).not.toBe(of({}));
    }
  });

  test('does not change with how a number was typed', () => {
    expect(of({ 'commands.loadLine_kPa': '1000' })).toBe(of({}));
    expect(of({ 'rings.height_um': '0.025 mm' })).toBe(of({}));
    expect(of({ 'pump.slip': '100' })).toBe(of({}));
  });
});

test('each path has a field, and none has two', () => {
  expect(new Set(ALL_FIELDS.map(({ path }) => path)).size).toBe(ALL_FIELDS.length);
  expect(fieldAt('ratios.first')?.assumed).toBe(4);
});
