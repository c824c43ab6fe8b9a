/** Where a meeting stands: a scene, and a step in it. Both count from 0. */
import type { Meeting, Scene } from './meeting.ts';

export interface Place {
  readonly scene: number;
  readonly step: number;
}
export const START: Place = { scene: 0, step: 0 };

export type Step = 'shown' | 'ask' | 'tally' | 'answer' | 'state' | 'run' | 'told' | 'open';

/** What the presses on a scene bring, one after the other: hands before bars, bars before the answer. */
export function stepsOf(scene: Scene): readonly Step[] {
  switch (scene.kind) {
    case 'vote':
      return ['ask', 'tally', 'answer'];
    case 'simulation':
      return scene.run === undefined ? ['state'] : ['state', 'run'];
    case 'case':
      return ['told', 'open'];
    case 'say':
    case 'picture':
      return ['shown'];
  }
}

type Scenes = Pick<Meeting, 'scenes'>;
const count = ({ scenes }: Scenes, scene: number): number => {
  const there = scenes[scene];
  return there === undefined ? 0 : stepsOf(there).length;
};

export const sceneAt = ({ scenes }: Scenes, { scene }: Place): Scene | undefined => scenes[scene];
export const stepAt = (meeting: Scenes, place: Place): Step | undefined => {
  const scene = sceneAt(meeting, place);
  return scene && stepsOf(scene)[place.step];
};

/** The next step, the next scene after the last of them; the end stays where it is. */
export function next(meeting: Scenes, place: Place): Place {
  if (place.step + 1 < count(meeting, place.scene)) return { ...place, step: place.step + 1 };
  return place.scene + 1 < meeting.scenes.length ? { scene: place.scene + 1, step: 0 } : place;
}

/** A step back, and from the first of a scene to the last of the one before. */
export function back(meeting: Scenes, place: Place): Place {
  if (place.step > 0) return { ...place, step: place.step - 1 };
  if (place.scene === 0) return place;
  const scene = place.scene - 1;
  return { scene, step: count(meeting, scene) - 1 };
}

export const lastPlace = (meeting: Scenes): Place => ({
  scene: meeting.scenes.length - 1,
  step: 0,
});

/** Behind the # of the address: `#stage-3-2`, counted from 1 as people do. */
export const hashOf = ({ scene, step }: Place): string => `#stage-${scene + 1}-${step + 1}`;

/** @returns undefined if the address names no scene; one that is not there any more is the nearest that is */
export function readHash(meeting: Scenes, hash: string): Place | undefined {
  const [, scene, step] = /^#stage-(\d{1,3})(?:-(\d{1,2}))?$/.exec(hash) ?? [];
  if (scene === undefined) return undefined;
  const at = Math.min(Math.max(Number(scene), 1), meeting.scenes.length) - 1;
  const of = count(meeting, at);
  return { scene: at, step: Math.min(Math.max(Number(step ?? 1), 1), of) - 1 };
}
