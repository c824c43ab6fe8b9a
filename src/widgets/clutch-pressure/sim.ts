import { fluidClasses } from '../../engine/index.ts';
import { hairs } from '../../ui/hairs.ts';
import { length, speed, temperature } from '../../ui/quantity.ts';
import type { ControlSpec, SimSpec } from '../../simulation/sim-spec.ts';
import type { PressureGivens, PressureModel } from './model.ts';
import { predict } from './predict.ts';
import { CRACK, SPEED, TEMP } from './ranges.ts';
import { tasks } from './tasks.ts';
import { says } from './words.ts';

const fluidWords = (name: keyof typeof fluidClasses, words: string) => {
  const { kv40CSt, kv100CSt } = fluidClasses[name];
  return { value: name, words, note: `${kv40CSt} cSt at 40 °C, ${kv100CSt} at 100 °C` };
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
      { value: 'idle', words: 'Idle', note: 'line 600 kPa (87 psi), clutch 400 kPa (58 psi)' },
      { value: 'load', words: 'Load', note: 'line 1000 kPa (145 psi), clutch 800 kPa (116 psi)' },
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
