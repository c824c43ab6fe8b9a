/** The line between the stage and the window with the notes. Both are of this site and on this device. */
import type { Clock } from '../meeting/clock.ts';
import type { Command } from '../meeting/keys.ts';
import type { Scene } from '../meeting/meeting.ts';
import type { Passage } from '../quiz/passage.ts';
import { stepsOf, type Step } from '../meeting/steps.ts';
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

export function snapshotOf(model: StageModel): Snapshot {
  const { meeting, place, scene, step, handsHere, clock, blank } = model;
  const here = scene.value;
  const following = meeting.scenes[place.value.scene + 1];
  const more = here && stepsOf(here)[place.value.step + 1];
  return {
    title: meeting.title,
    minutes: meeting.minutes,
    scene: place.value.scene,
    scenes: meeting.scenes.length,
    heading: here?.heading ?? '',
    wall: here ? wallOf(here) : [],
    notes: here?.notes ?? [],
    step: step.value,
    next: more ? { step: more } : following ? { heading: following.heading } : null,
    votes:
      here?.kind === 'vote'
        ? here.options.map(({ words, correct }, i) => ({
            ...{ words, correct },
            hands: handsHere.value[i] ?? 0,
          }))
        : [],
    clock: clock.value,
    blank: blank.value,
  };
}
