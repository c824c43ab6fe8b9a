import { multiple } from '../../quantity/part-quantities.ts';
import { hairs } from '../../quantity/hairs.ts';
import { length, percent, speed, temperature } from '../../quantity/quantities.ts';
import type { ControlSpec, SimSpec } from '../../simulation/sim-spec.ts';
import type { HungryGivens, HungryModel } from './model.ts';
import { predict } from './predict.ts';
import { BORE, FILTER, SPEED, TEMP, WEAR } from './ranges.ts';
import { says } from './words.ts';

const controls: readonly ControlSpec<HungryGivens>[] = [
  { kind: 'number', key: 'rpm', label: 'Engine, turns the pump', quantity: speed, ...SPEED },
  { kind: 'number', key: 'temp', label: 'Fluid', quantity: temperature, ...TEMP },
  {
    kind: 'number',
    key: 'pump',
    label: 'Pump wear',
    quantity: percent,
    ...WEAR,
    words: (value) => (value === 0 ? 'sound' : value === 100 ? 'the worst offered' : ''),
  },
  {
    kind: 'number',
    key: 'bore',
    label: 'Regulator bore, worn by',
    quantity: length,
    ...BORE,
    words: (mm) => (mm === 0 ? 'sound' : hairs(mm)),
  },
  {
    kind: 'number',
    key: 'filter',
    label: 'Filter, against a clean one',
    quantity: multiple,
    ...FILTER,
    words: (value) => (value === 1 ? 'clean' : 'as hard to draw through'),
  },
];

export const sim: SimSpec<HungryGivens, HungryModel> = {
  id: 'who-goes-hungry',
  title: 'Who goes hungry?',
  linkVersion: 1,
  controls,
  predict,
  says,
};
