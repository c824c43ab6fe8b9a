import { format } from '../../quantity/print.ts';
import { fluidControl } from '../../simulation/choices/fluid-class.ts';
import { faultControl, severityControl } from '../../simulation/faults/controls.ts';
import { temperature, length } from '../../quantity/quantities.ts';
import type { ControlSpec, SimSpec } from '../../simulation/sim-spec.ts';
import type { EngagementGivens, EngagementModel } from './model.ts';
import { tasks } from './tasks.ts';
import { atTheCheck, outcomeOf, says } from './words.ts';

const controls: readonly ControlSpec<EngagementGivens>[] = [
  {
    kind: 'number',
    key: 'temp',
    label: 'Fluid in the hot run',
    quantity: temperature,
    min: -30,
    max: 140,
    step: 2,
  },
  severityControl('severity'),
  {
    kind: 'choice',
    key: 'selection',
    label: 'Range selection',
    options: [
      { value: 'electronic', words: 'Electronic' },
      { value: 'mechanical', words: 'Mechanical', note: 'lever and cable' },
    ],
  },
  faultControl('fault'),
  {
    kind: 'choice',
    key: 'show',
    label: 'Speed shown',
    as: 'select',
    options: [
      { value: 'turbine', words: 'Turbine' },
      { value: 'sensor', words: 'Turbine, as its sensor says' },
      { value: 'engine', words: 'Engine' },
      { value: 'output', words: 'Output' },
      { value: 'slip', words: 'Slip' },
    ],
  },
  {
    kind: 'choice',
    key: 'range',
    label: 'Range',
    options: [
      { value: 'drive', words: 'Drive' },
      { value: 'reverse', words: 'Reverse' },
    ],
  },
  {
    kind: 'choice',
    key: 'failSafe',
    label: 'Fail-safe with a cable',
    options: [
      { value: 'neutral', words: 'Neutral' },
      { value: 'default-gear', words: 'One gear held' },
    ],
  },
  fluidControl('fluid'),
];

export const sim: SimSpec<EngagementGivens, EngagementModel> = {
  id: 'engagement',
  title: 'Seven seconds after Drive',
  linkVersion: 1,
  controls,
  predict: {
    question: (system) =>
      `A crack of ${format(0.3, length, system)} in the transfer seal, electronic range selection. Cold, the turbine stops within two seconds of selecting Drive and the car pulls away. Now the fluid is hot. What happens?`,
    options: [
      {
        id: 'late',
        words: 'The turbine stops a little later. The car pulls away as before.',
        why: 'That is what a smaller crack does. This one takes more than the feed can bring, so the pressure never gets to what the torque needs. The turbine keeps turning.',
      },
      {
        id: 'slips',
        words: 'The turbine turns on. The clutch slips, and the controller lets it.',
        why: 'It does turn on and slip. But slip is exactly what the controller watches for. It raises pressure once, and when that does not help it stores a code and takes the clutch away.',
      },
      {
        id: 'park',
        words: 'The turbine turns on. The controller gives up and selects Park.',
        why: 'The turbine does not stop, the controller reads that as slip, and raising the pressure only pushes more fluid through the crack. With electronic selection it can move the park pawl, and at a standstill it does.',
      },
    ],
    start: {
      temp: 20,
      fault: 'transferSeal',
      severity: 75,
      selection: 'electronic',
      range: 'drive',
      fluid: 'low-viscosity',
      show: 'turbine',
    },
    end: { temp: 100 },
    runLabel: 'Run it hot',
    outcome: ({ hot }) => {
      const { parked, codeStored, solved } = hot.value;
      const option = parked
        ? 'park'
        : codeStored || solved.stoppedAfter === null
          ? 'slips'
          : 'late';
      return {
        option,
        words: (system) => `Hot, ${outcomeOf(hot.value, system)}. ${atTheCheck(hot.value, system)}`,
      };
    },
  },
  tasks,
  says,
};
