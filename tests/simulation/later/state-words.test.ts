import { expect, test } from 'vitest';
import { stateWords, type NamedState } from '../../../src/simulation/later/state-words.ts';
import { sim as bench } from '../../../src/widgets/gap-or-hole/sim.ts';
import { sim as ways } from '../../../src/widgets/two-ways/sim.ts';

const said = (sim: NamedState, state: string, system: 'si' | 'us') =>
  stateWords(sim, state, system).map(({ label, value }) => `${label}: ${value}`);

test('a state is told by the names of its controls, in the units of the reader', () => {
  const state = '1~temp.82.2~pressure.690~fluid.low-viscosity';
  const [temp, pressure, fluid] = said(bench, state, 'us');
  expect(temp).toMatch(/: 180\u00a0°F$/u);
  expect(pressure).toMatch(/: 100\u00a0psi$/u);
  expect(fluid).not.toContain('low-viscosity');
  expect(said(bench, state, 'si')[1]).toMatch(/: 690\u00a0kPa$/u);
});

test('of a choice stand the words that its buttons have', () => {
  const control = ways.controls.find(({ kind }) => kind === 'choice');
  if (control?.kind !== 'choice') throw new Error('no choice');
  const [first] = control.options;
  expect(said(ways, `${ways.linkVersion}~${control.key}.${first?.value}`, 'us')).toEqual([
    `${String(control.label)}: ${String(first?.words)}`,
  ]);
});

test('what the link does not set, or sets to what is not offered, is left out', () => {
  expect(said(bench, '1~temp.90', 'si')).toHaveLength(1);
  expect(said(bench, '1~fluid.water~temp.x~nothing.5', 'si')).toEqual([]);
  expect(said(bench, '7~temp.90', 'si')).toEqual([]);
});
