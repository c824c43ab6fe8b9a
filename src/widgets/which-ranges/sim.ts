import { faultControl, severityControl } from '../../simulation/faults/controls.ts';
import type { ControlSpec, SimSpec } from '../../simulation/sim-spec.ts';
import type { RangesGivens, RangesModel } from './model.ts';
import { predict } from './predict.ts';
import { says } from './words.ts';

const ranges = [
  { value: 'forward', words: 'Forward' },
  { value: 'reverse', words: 'Reverse' },
  { value: 'high', words: 'High' },
];

const controls: readonly ControlSpec<RangesGivens>[] = [
  faultControl('fault'),
  severityControl('severity'),
  {
    kind: 'choice',
    key: 'circuit',
    label: 'Sits in (rings, piston seal, plug)',
    options: ranges,
  },
  { kind: 'choice', key: 'engaged', label: 'Range drawn', options: ranges },
  {
    kind: 'choice',
    key: 'test',
    label: 'Test drawn',
    options: [
      { value: 'cold-idle', words: 'Cold, idle' },
      { value: 'cold-load', words: 'Cold, load' },
      { value: 'hot-idle', words: 'Hot, idle' },
      { value: 'hot-load', words: 'Hot, load' },
    ],
  },
];

export const sim: SimSpec<RangesGivens, RangesModel> = {
  id: 'which-ranges',
  title: 'Which ranges suffer?',
  linkVersion: 1,
  controls,
  predict,
  says,
};
