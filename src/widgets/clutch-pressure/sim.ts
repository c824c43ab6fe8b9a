import { fluidClasses, testPoints } from '../../engine/index.ts';
import { hairs } from '../../quantity/hairs.ts';
import { printer } from '../../quantity/print.ts';
import {
  kinematicViscosity,
  length,
  pressure,
  speed,
  temperature,
} from '../../quantity/quantities.ts';
import type { UnitText } from '../../quantity/unit-system.ts';
import type { ControlSpec, SimSpec } from '../shell/sim-spec.ts';
import type { PressureGivens, PressureModel } from './model.ts';
import { predict } from './predict.ts';
import { CRACK, SPEED, TEMP } from './ranges.ts';
import { tasks } from './tasks.ts';
import { says } from './words.ts';

const fluidWords = (name: keyof typeof fluidClasses, words: string) => {
  const { kv40CSt, kv100CSt } = fluidClasses[name];
  const note: UnitText = (system) => {
    const print = printer(system);
    return `${print(kv40CSt, kinematicViscosity)} at ${print(40, temperature)}, ${print(kv100CSt, kinematicViscosity)} at ${print(100, temperature)}`;
  };
  return { value: name, words, note };
};
const commands =
  (at: keyof typeof testPoints): UnitText =>
  (system) => {
    const print = printer(system);
    const { line, clutch } = testPoints[at];
    return `line ${print(line / 1e3, pressure)}, clutch ${print(clutch / 1e3, pressure)}`;
  };

const controls: readonly ControlSpec<PressureGivens>[] = [
  { kind: 'number', key: 'temp', label: 'Fluid', quantity: temperature, ...TEMP },
  {
    kind: 'number',
    key: 'crack',
    label: 'Crack in the transfer seal',
    quantity: length,
    ...CRACK,
    words: hairs,
  },
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
  {
    kind: 'choice',
    key: 'circuit',
    label: 'Circuit',
    options: [
      { value: 'forward', words: 'Forward', note: 'through the transfer seal' },
      { value: 'reverse', words: 'Reverse', note: 'through the transfer seal' },
      { value: 'high', words: 'High', note: 'another way round' },
    ],
  },
  {
    kind: 'choice',
    key: 'point',
    label: 'What the controller commands',
    options: [
      { value: 'idle', words: 'Idle', note: commands('idle') },
      { value: 'load', words: 'Load', note: commands('load') },
    ],
  },
  {
    kind: 'choice',
    key: 'fluid',
    label: 'Fluid class',
    options: [
      fluidWords('standard', 'Standard'),
      fluidWords('low-viscosity', 'Low viscosity'),
      fluidWords('ultra-low', 'Ultra low'),
    ],
  },
];

export const sim: SimSpec<PressureGivens, PressureModel> = {
  id: 'clutch-pressure',
  title: 'Does the clutch hold?',
  linkVersion: 1,
  controls,
  predict,
  tasks,
  says,
};
