/** The line between the stage and the window with the notes. Both are of this site and on this device. */
import type { Clock } from '../meeting/clock.ts';
import type { Command } from '../meeting/keys.ts';
import type { Scene } from '../meeting/meeting.ts';
import type { Passage } from '../quiz/passage.ts';
import { explained, isAnswered, stepAt, stepOfWhy, type Step } from '../meeting/steps.ts';
import type { StageModel } from './model.ts';

export interface Snapshot {
  readonly title: string;
  readonly minutes: number;
  readonly scene: number;
  readonly scenes: number;
  readonly heading: string;
  /** What the room reads, so that nobody has to turn round. */
  readonly wall: readonly Passage[];
  readonly notes: Passage;
  readonly step: Step | undefined;
  /** What the next press brings: another step of this scene, the next scene by its heading, or nothing. */
  readonly next: { readonly step: Step } | { readonly heading: string } | null;
  readonly votes: readonly {
    readonly words: Passage;
    readonly hands: number;
    readonly correct: boolean;
    /** Once bars stand on the wall. */
    readonly why: Passage;
    /** Whether the wall tells why, where it tells one option's at a time, once the answer is out. */
    readonly told?: boolean | undefined;
  }[];
  readonly clock: Clock;
  readonly blank: boolean;
}

export type ToNotes =
  | { readonly say: 'now'; readonly snapshot: Snapshot }
  | { readonly say: 'over'; readonly scene: number };
export type ToStage = { readonly ask: 'now' } | { readonly ask: 'do'; readonly command: Command };

export const channelName = (channel: string): string => `hot-clutch:meeting:${channel}`;

function wallOf(scene: Scene): readonly Passage[] {
  switch (scene.kind) {
    case 'vote':
      return [scene.stem];
    case 'case':
      return scene.complaint === undefined ? scene.lines : [[scene.complaint], ...scene.lines];
    default:
      return scene.lines;
  }
}

function nextOf({ meeting, place, following }: StageModel): Snapshot['next'] {
  const to = following.value;
  if (to.scene !== place.value.scene) return { heading: meeting.scenes[to.scene]?.heading ?? '' };
  const step = to.step === place.value.step ? undefined : stepAt(meeting, to);
  return step === undefined ? null : { step };
}

function votesOf({ place, scene, step, handsHere }: StageModel): Snapshot['votes'] {
  const here = scene.value;
  if (here?.kind !== 'vote') return [];
  const out = isAnswered(step.value);
  const told = explained(here, place.value.step);
  return here.options.map(({ words, correct, why }, i) => ({
    ...{ words, correct },
    hands: handsHere.value[i] ?? 0,
    why: step.value === 'ask' ? [] : why,
    told: out && stepOfWhy(here, i) !== undefined ? told.includes(i) : undefined,
  }));
}

export function snapshotOf(model: StageModel): Snapshot {
  const { meeting, place, scene, step, clock, blank } = model;
  const here = scene.value;
  return {
    title: meeting.title,
    minutes: meeting.minutes,
    scene: place.value.scene,
    scenes: meeting.scenes.length,
    heading: here?.heading ?? '',
    wall: here ? wallOf(here) : [],
    notes: here?.notes ?? [],
    step: step.value,
    next: nextOf(model),
    votes: votesOf(model),
    clock: clock.value,
    blank: blank.value,
  };
}
