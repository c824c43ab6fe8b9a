/** How the driver selects, and what: the same two controls wherever an engagement is told. */
import type { ChoiceSpec } from '../sim-spec.ts';
import { withValues } from '../told.ts';
import { words } from './words.en.ts';

export const selectionControl = <K extends string>(key: K) =>
  ({
    kind: 'choice',
    key,
    label: words.selection,
    options: withValues(words.selections),
  }) satisfies ChoiceSpec<Record<K, string>>;

export const rangeControl = <K extends string>(key: K) =>
  ({
    kind: 'choice',
    key,
    label: words.range,
    options: withValues(words.ranges),
  }) satisfies ChoiceSpec<Record<K, string>>;
