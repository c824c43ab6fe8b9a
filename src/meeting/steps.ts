/** Where a meeting stands: a scene, and a step in it. Both count from 0. */
import { passageText } from '../quiz/asked.ts';
import type { Passage } from '../quiz/passage.ts';
import type { Meeting, Scene, VoteScene } from './meeting.ts';

export interface Place {
  readonly scene: number;
  readonly step: number;
}
export const START: Place = { scene: 0, step: 0 };

export type Step = 'shown' | 'ask' | 'tally' | 'answer' | 'why' | 'state' | 'run' | 'told' | 'open';

/** What the presses on a scene bring, one after the other: hands before bars, bars before the answer, and that before a why of its own. */
export function stepsOf(scene: Scene): readonly Step[] {
  switch (scene.kind) {
    case 'vote':
      return [...TO_ANSWER, ...apart(scene).map(() => 'why' as const)];
    case 'simulation':
      return scene.run === undefined ? ['state'] : ['state', 'run'];
    case 'case':
      return ['told', 'open'];
    case 'say':
    case 'picture':
      return ['shown'];
  }
}

/** Whether the answer of a vote is out: no hand counts any more. */
export const isAnswered = (step: Step | undefined): boolean => step === 'answer' || step === 'why';

const TO_ANSWER = ['ask', 'tally', 'answer'] as const;
const ANSWER = TO_ANSWER.length - 1;

/** What stands on a wall of 1920 x 1080 with bars and every why, in letters of 24 px and more [characters]; measured on the questions of the course. */
const MOST_AT_ONCE = 850;
const OPTIONS_AT_ONCE = 3;

const length = (words: Passage): number =>
  Math.max(passageText(words, 'us').length, passageText(words, 'si').length);

/** Wrong options whose why waits for a press of its own, because all of them together do not fit on the wall. */
export function apart({ stem, chart, options }: VoteScene): readonly number[] {
  const all = options.reduce(
    (sum, { words, why }) => sum + length(words) + length(why),
    length(stem),
  );
  if (!chart && options.length <= OPTIONS_AT_ONCE && all <= MOST_AT_ONCE) return [];
  return options.flatMap(({ correct, why }, i) => (correct || why.length === 0 ? [] : [i]));
}

/** The options that say why at a step of a vote. */
export function explained(scene: VoteScene, step: number): readonly number[] {
  if (step < ANSWER) return [];
  const later = apart(scene);
  const right = scene.options.findIndex(({ correct }) => correct);
  if (later.length > 0) return [step === ANSWER ? right : (later[step - ANSWER - 1] ?? right)];
  return Array.from(scene.options.keys());
}

/** The step at which an option says why, once the answer is out; undefined where none of them waits for it. */
export function stepOfWhy(scene: VoteScene, option: number): number | undefined {
  const later = apart(scene);
  if (later.length === 0) return undefined;
  if (scene.options[option]?.correct) return ANSWER;
  const at = later.indexOf(option);
  return at === -1 ? undefined : ANSWER + 1 + at;
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

/** Steps that going on and back leave out. */
type LeftOut = (place: Place) => boolean;
const none: LeftOut = () => false;

/** The next step, the next scene after the last of them; the end stays where it is. */
export function next(meeting: Scenes, place: Place, leftOut = none): Place {
  const { scene } = place;
  for (let step = place.step + 1; step < count(meeting, scene); step += 1)
    if (!leftOut({ scene, step })) return { scene, step };
  return scene + 1 < meeting.scenes.length ? { scene: scene + 1, step: 0 } : place;
}

/** A step back, and from the first of a scene to the last of the one before. */
export function back(meeting: Scenes, place: Place, leftOut = none): Place {
  const scene = place.step > 0 ? place.scene : place.scene - 1;
  let step = (place.step > 0 ? place.step : count(meeting, scene)) - 1;
  while (leftOut({ scene, step })) step -= 1;
  return scene < 0 ? place : { scene, step };
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
