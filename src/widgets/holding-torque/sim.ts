import { area, dimension, force, friction } from '../../quantity/part-quantities.ts';
import { pressure, count } from '../../quantity/quantities.ts';
import type { ControlSpec, SimSpec } from '../../simulation/sim-spec.ts';
import { books, BOOKS } from './books.ts';
import type { HoldingGivens, HoldingModel } from './model.ts';
import { predict } from './predict.ts';
import { AREA, FACES, FRICTION, PRESSURE, RADIUS, SPRING } from './ranges.ts';
import { says } from './words.ts';

const faces = { ...count, name: 'number of faces' };
const plates = (n: number): string => {
  if (n === 1) return 'one side of one plate';
  return n % 2 === 0 ? `both sides of ${n === 2 ? 'one plate' : `${n / 2} plates`}` : '';
};
const frictionWords = (value: number): string =>
  value < 0.095 ? 'worn or burnt paper' : value <= 0.145 ? 'good paper in oil' : 'dry lining';

const controls: readonly ControlSpec<HoldingGivens>[] = [
  { kind: 'number', key: 'pressure', label: 'Clutch pressure', quantity: pressure, ...PRESSURE },
  {
    kind: 'number',
    key: 'friction',
    label: 'Friction of the plates',
    quantity: friction,
    ...FRICTION,
    words: frictionWords,
  },
  {
    kind: 'number',
    key: 'faces',
    label: 'Faces that rub',
    quantity: faces,
    ...FACES,
    words: plates,
  },
  {
    kind: 'choice',
    key: 'example',
    label: 'Which clutch',
    as: 'select',
    options: [
      { value: 'training', words: 'The training clutch' },
      ...BOOKS.map((value) => ({ value, words: `Book: ${books[value].short}` })),
      { value: 'own', words: 'Your own numbers' },
    ],
  },
  {
    kind: 'choice',
    key: 'required',
    label: 'The clutch has to',
    options: [
      { value: 'idle', words: 'Stand in gear', note: 'engine at 700 rpm' },
      { value: 'take-off', words: 'Take off', note: 'engine at 1500 rpm, car not yet moving' },
    ],
  },
  { kind: 'number', key: 'area', label: 'Piston area', quantity: area, ...AREA },
  { kind: 'number', key: 'radius', label: 'Mean radius', quantity: dimension, ...RADIUS },
  { kind: 'number', key: 'spring', label: 'Return spring', quantity: force, ...SPRING },
];

export const sim: SimSpec<HoldingGivens, HoldingModel> = {
  id: 'holding-torque',
  title: 'What can this clutch hold?',
  linkVersion: 1,
  controls,
  predict,
  says,
};
