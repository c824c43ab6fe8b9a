import { CAUSES, COMPLAINT_IDS, complaintOf } from '../../cases/complaints.ts';
import { minutesFrom } from '../../cases/split-list.ts';
import { listOf } from '../../quantity/lists.ts';
import { format } from '../../quantity/print.ts';
import { count, seconds } from '../../quantity/quantities.ts';
import { numberControl } from '../../simulation/choices/number.ts';
import type { SimSpec } from '../../simulation/sim-spec.ts';
import { told, withIds } from '../../simulation/told.ts';
import {
  carWith,
  MOST_TAKEN,
  orderOf,
  type ThreeChecksGivens,
  type ThreeChecksModel,
} from './model.ts';
import { causeName, complaintName, printCount, printMinutes } from './print.ts';
import { readOf } from './readings.ts';
import { words } from './words.en.ts';

const start = { complaint: 'lateCold', car: carWith('lateCold', 'hardLip'), taken: 0 } as const;
const { causes, checks } = complaintOf(start.complaint);
const placeOf = (key: string): number => Object.keys(checks).indexOf(key);
const end = { taken: orderOf([placeOf('twice'), placeOf('reverse')]) };

const OFFERED = ['twice', 'sister', 'level'] as const;
const begunWith = (first: string): number => minutesFrom({ causes, checks }, first, causes);
export const withSeal = COMPLAINT_IDS.filter((id) => complaintOf(id).causes.includes('seal'));
const facts = () => {
  const [drive = 0, reverse = 0] = readOf('lateCold', 'reverse', 'hardLip')?.values ?? [];
  return {
    twice: printMinutes(begunWith('twice')),
    sister: printMinutes(begunWith('sister')),
    level: printMinutes(begunWith('level')),
    few: printCount(withSeal.length),
    all: printCount(COMPLAINT_IDS.length),
    drive: format(drive, seconds, 'si'),
    reverse: format(reverse, seconds, 'si'),
  };
};
const { options, ...predict } = told(words.predict, facts);
const { says } = words;

export const sim: SimSpec<ThreeChecksGivens, ThreeChecksModel> = {
  id: 'three-checks',
  title: words.title,
  linkVersion: 1,
  controls: [
    {
      kind: 'choice',
      key: 'complaint',
      label: words.controls.complaint,
      as: 'select',
      options: COMPLAINT_IDS.map((value) => ({ value, words: complaintName(value) })),
    },
    {
      kind: 'choice',
      key: 'car',
      label: words.controls.car,
      as: 'select',
      options: Array.from({ length: CAUSES }, (_, i) => ({
        value: String(i + 1),
        words: words.controls.number({ number: String(i + 1) }),
      })),
    },
    numberControl('taken', words.controls.taken, count, { min: 0, max: MOST_TAKEN, step: 1 }),
  ],
  predict: {
    ...predict,
    options: withIds(options),
    start,
    end,
    runMs: 600,
    outcome: () => ({
      option: OFFERED.reduce((one, other) => (begunWith(other) < begunWith(one) ? other : one)),
      words: words.outcome(facts()),
    }),
  },
  says: ({ givens, taken, minutes, left, way, goesOn }, _system, inTask) => {
    const all = printCount(CAUSES);
    if (taken.value.length === 0) return says.none({ all });
    const spent = printMinutes(minutes.value);
    const names = left.value.map((cause) => causeName(givens.complaint.value, cause));
    const [only = ''] = names;
    if (names.length === 1) return says.one({ minutes: spent, name: only });
    const stands = says.left({ minutes: spent, left: printCount(names.length), all });
    const idle = way.value.at(-1)?.off.length === 0 ? says.nothing : '';
    const over = !goesOn.value && inTask !== true ? says.end({ names: listOf(names) }) : '';
    return [stands, idle, over].filter((one) => one !== '').join(' ');
  },
};
