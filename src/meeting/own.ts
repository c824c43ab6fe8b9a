/** A meeting of one's own: what it still lacks, and how it looks on the stage. */
import type { Asked } from '../quiz/asked.ts';
import {
  whyOf,
  type OwnPlan,
  type OwnScene,
  type OwnVote,
} from '../storage/meetings/own-meeting.ts';
import type { Meeting, Scene, VoteOption } from './meeting.ts';
import { readStateLink } from './state-link.ts';

export type Lack =
  | 'title'
  | 'scenes'
  | 'heading'
  | 'lines'
  | 'stem'
  | 'options'
  | 'right'
  | 'question'
  | 'simulation';

export interface Lacking {
  /** Undefined: the meeting as a whole. */
  readonly scene?: number;
  readonly what: Lack;
}

/** Questions of the bank by lesson and id, as far as they could be had. */
export type Questions = ReadonlyMap<string, Asked>;
export const questionKey = ({ lesson, id }: { readonly lesson: string; readonly id: string }) =>
  `${lesson}/${id}`;

const isEmpty = (text: string): boolean => text.trim() === '';

/** What keeps it from being started; empty if nothing does. */
export function lacking({ title, scenes }: OwnPlan): readonly Lacking[] {
  return [
    ...(isEmpty(title) ? [{ what: 'title' as const }] : []),
    ...(scenes.length === 0 ? [{ what: 'scenes' as const }] : []),
    ...scenes.flatMap((scene, index) => lacksOf(scene).map((what) => ({ scene: index, what }))),
  ];
}

function lacksOf(scene: OwnScene): readonly Lack[] {
  const heading: readonly Lack[] = isEmpty(scene.heading) ? ['heading'] : [];
  switch (scene.kind) {
    case 'say':
      return [...heading, ...(scene.lines.every(isEmpty) ? (['lines'] as const) : [])];
    case 'vote': {
      const filled = scene.options.filter((option) => !isEmpty(option));
      return [
        ...heading,
        ...(isEmpty(scene.stem) ? (['stem'] as const) : []),
        ...(filled.length < 2 ? (['options'] as const) : []),
        ...(isEmpty(scene.options[scene.right] ?? '') ? (['right'] as const) : []),
      ];
    }
    case 'simulation':
      return [...heading, ...(readStateLink(scene.href) ? [] : (['simulation'] as const))];
    case 'question':
    case 'case':
      return heading;
  }
}

/** A question that this site has no more leaves its scene with its heading and notes. */
export function shownOf(id: string, plan: OwnPlan, questions: Questions): Meeting {
  return {
    id: `own-${id}`,
    title: plan.title,
    minutes: plan.minutes,
    scenes: plan.scenes.map((scene) => sceneOf(scene, questions)),
  };
}

const passage = (text: string): readonly string[] => (isEmpty(text) ? [] : [text]);

function sceneOf(scene: OwnScene, questions: Questions): Scene {
  const common = { heading: scene.heading, notes: passage(scene.notes), lines: [] };
  switch (scene.kind) {
    case 'say':
      return {
        ...common,
        kind: 'say',
        lines: scene.lines.filter((line) => !isEmpty(line)).map(passage),
      };
    case 'vote':
      return { ...common, kind: 'vote', stem: [scene.stem], options: optionsOf(scene) };
    case 'question': {
      const asked = questions.get(questionKey(scene));
      return asked?.kind === 'single'
        ? {
            ...common,
            kind: 'vote',
            lesson: scene.lesson,
            stem: asked.stem,
            chart: asked.chart,
            options: asked.options.map(({ words, correct, why }) => ({ words, correct, why })),
          }
        : { ...common, kind: 'say' };
    }
    case 'simulation':
      return { ...common, kind: 'simulation', state: scene.href };
    case 'case':
      return { ...common, kind: 'case', car: { search: scene.search } };
  }
}

const optionsOf = (vote: OwnVote): readonly VoteOption[] =>
  vote.options.flatMap((option, i) =>
    isEmpty(option)
      ? []
      : [{ words: [option], correct: i === vote.right, why: passage(whyOf(vote, i)) }],
  );
