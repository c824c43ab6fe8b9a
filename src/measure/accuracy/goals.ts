import type { Figures } from './figures.ts';

/** Which cars a line is about. */
export type Group = 'one' | 'two' | 'outside' | 'crack';
/** One line of the table: what came out, and what it was meant to reach. */
export interface Goal {
  readonly id: string;
  readonly of: Group;
  readonly value: (figures: Figures) => number;
  readonly least?: number;
  readonly most?: number;
  readonly in: 'share' | 'minutes' | 'times';
}

const worst = ({ leak }: Figures, most: boolean): number =>
  leak.reduce((so, { held }) => (most ? Math.max(so, held) : Math.min(so, held)), most ? 0 : 1);

/** Floors of the planner's specification, section 10, and its aim for two faults named; the false alarm is of its section 8. */
export const GOALS = [
  { id: 'rightFirst', of: 'one', value: (f) => f.oneFault.rightFirst, least: 0.95, in: 'share' },
  {
    id: 'rightWithinTwo',
    of: 'one',
    value: (f) => f.oneFault.rightWithinTwo,
    least: 0.98,
    in: 'share',
  },
  { id: 'reached90', of: 'one', value: (f) => f.oneFault.reached90, least: 0.95, in: 'share' },
  {
    id: 'calibration',
    of: 'one',
    value: (f) => f.oneFault.calibrationError,
    most: 0.03,
    in: 'share',
  },
  {
    id: 'unlistedAccused',
    of: 'one',
    value: (f) => f.oneFault.unlistedAccused,
    most: 0.02,
    in: 'share',
  },
  {
    id: 'allReadings',
    of: 'one',
    value: (f) => f.oneFault.rightFirstAllReadings,
    least: 0.98,
    in: 'share',
  },
  { id: 'minutes', of: 'one', value: (f) => f.oneFault.minutes, most: 75, in: 'minutes' },
  { id: 'minutesRatio', of: 'one', value: (f) => f.oneFault.minutesRatio, most: 0.55, in: 'times' },
  {
    id: 'falseAlarm',
    of: 'one',
    value: (f) => f.oneFault.falseAlarmNoSingleFault,
    most: 0.01,
    in: 'share',
  },
  {
    id: 'twoOnTopAll',
    of: 'two',
    value: (f) => f.twoFaults.oneOnTopAllReadings,
    least: 0.85,
    in: 'share',
  },
  { id: 'twoOnTop', of: 'two', value: (f) => f.twoFaults.oneOnTop, least: 0.85, in: 'share' },
  {
    id: 'twoNoFit',
    of: 'two',
    value: (f) => f.twoFaults.noSingleFaultFits,
    least: 0.8,
    in: 'share',
  },
  {
    id: 'twoNamed',
    of: 'two',
    value: (f) => f.twoFaults.bothNamedAllReadings,
    least: 0.8,
    in: 'share',
  },
  {
    id: 'outsideOnTop',
    of: 'outside',
    value: (f) => f.unlisted.onTopAllReadings,
    least: 0.9,
    in: 'share',
  },
  {
    id: 'outsideAccused',
    of: 'outside',
    value: (f) => f.unlisted.listedAccused,
    most: 0.25,
    in: 'share',
  },
  { id: 'leakLeast', of: 'crack', value: (f) => worst(f, false), least: 0.86, in: 'share' },
  { id: 'leakMost', of: 'crack', value: (f) => worst(f, true), most: 0.94, in: 'share' },
] as const satisfies readonly Goal[];
export type GoalId = (typeof GOALS)[number]['id'];

/** In the order of the table. */
export const GROUPS: readonly Group[] = ['one', 'two', 'outside', 'crack'];

export const reached = ({ value, least, most }: Goal, figures: Figures): boolean =>
  value(figures) >= (least ?? -Infinity) && value(figures) <= (most ?? Infinity);
