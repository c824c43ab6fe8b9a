import { expect, test } from 'vitest';
import { ALL_FIELDS, fieldAt } from '../../../src/own-sheet/fields.ts';
import {
  CHART_PATHS,
  FLUID_PATH,
  readSheet,
  SEAL_PATH,
} from '../../../src/own-sheet/read-sheet.ts';
import { saidOf, sentenceOf, shownIn } from '../../../src/measure/transmission/sentences.ts';
import { newSheet, type OwnSheet } from '../../../src/storage/sheets/own-sheet.ts';

const typedIn = (
  fields: Readonly<Record<string, string>>,
  units: 'us' | 'si' = 'si',
): OwnSheet => ({
  ...newSheet('a', 1, 'Mine'),
  fields: Object.fromEntries(
    Object.entries(fields).map(([path, text]) => [path, { at: 2, value: { text, units } }]),
  ),
});
const said = (fields: Readonly<Record<string, string>>, system: 'us' | 'si' = 'si'): string[] => {
  const sheet = typedIn(fields, system);
  return [...readSheet(sheet).troubles].map(([path, trouble]) =>
    sentenceOf(trouble, path, sheet, system).replaceAll('\u00a0', ' '),
  );
};

test('every field has a name and says where it is found', () => {
  for (const { path } of ALL_FIELDS) {
    const { label, where } = saidOf(path);
    expect(label, path).not.toContain(path);
    expect(where.length, path).toBeGreaterThan(8);
  }
  for (const path of [...CHART_PATHS, SEAL_PATH, FLUID_PATH])
    expect(saidOf(path).label).not.toBe('');
});

test('an impossible number is told with what is allowed, in the units of the reader', () => {
  expect(said({ idle_rpm: '70' })).toEqual([
    '70 rpm is below what is allowed here: 300 rpm to 2000 rpm.',
  ]);
  const [sentence = ''] = said({ 'commands.idleLine_kPa': '2000' }, 'us');
  expect(sentence).toContain('2000 psi');
  expect(sentence).toContain('435 psi');
});

test('numbers that do not go together are told with both', () => {
  const [line = ''] = said({ 'commands.idleClutch_kPa': '700' });
  expect(line).toContain('700 kPa');
  expect(line).toContain('600 kPa');
  // 4000 N on 85 cm² are 471 kPa: force over area.
  const [spring = ''] = said({ 'clutches.high.spring_N': '4000' });
  expect(spring).toContain('471 kPa');
  expect(spring).toContain('250 kPa');
  expect(said({ 'applyChart.1': 'high' })[0]).toContain('First needs the forward clutch');
});

test('what was typed reads in the units of the reader, and as typed in its own', () => {
  const field = fieldAt('commands.idleLine_kPa');
  if (!field) throw new Error('no field');
  const typed = { text: '87.0', units: 'us' as const };
  expect(shownIn(typed, field, 'us')).toBe('87.0');
  // 87 psi × 6.894757 kPa, NIST SP 811.
  expect(shownIn(typed, field, 'si')).toBe('600');
  expect(shownIn({ text: 'about 90', units: 'us' }, field, 'si')).toBe('about 90');
});

test('the example is what is assumed there', () => {
  expect(said({ 'commands.idleLine_kPa': 'high' }, 'us')[0]).toMatch(/such as 87\.$/);
});
