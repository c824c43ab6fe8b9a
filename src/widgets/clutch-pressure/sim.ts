import { circuitControl, testPointControl } from '../../simulation/choices/circuit.ts';
import { fluidControl } from '../../simulation/choices/fluid-class.ts';
import { crackControl } from '../../simulation/choices/number.ts';
import { speed, temperature } from '../../quantity/quantities.ts';
import type { ControlSpec, SimSpec } from '../../simulation/sim-spec.ts';
import type { PressureGivens, PressureModel } from './model.ts';
import { predict } from './predict.ts';
import { SPEED, TEMP } from './ranges.ts';
import { says } from './words.ts';

const controls: readonly ControlSpec<PressureGivens>[] = [
  { kind: 'number', key: 'temp', label: 'Fluid', quantity: temperature, ...TEMP },
  crackControl('crack'),
  { kind: 'number', key: 'rpm', label: 'Engine, turns the pump', quantity: speed, ...SPEED },
  {
    kind: 'choice',
    key: 'required',
    label: 'The clutch has to',
    options: [
      { value: 'idle', words: 'Stand in gear', note: 'engine at 700 rpm' },
      { value: 'take-off', words: 'Take off', note: 'engine up to 1500 rpm, car not yet moving' },
    ],
  },
  circuitControl('circuit'),
  testPointControl('point'),
  fluidControl('fluid'),
];

export const sim: SimSpec<PressureGivens, PressureModel> = {
  id: 'clutch-pressure',
  title: 'Does the clutch hold?',
  linkVersion: 1,
  controls,
  predict,
  says,
};
