/** The meetings that are written, with what their scenes point at. Read when the site is built. */
import { existsSync, readFileSync, readdirSync } from 'node:fs';
import { basename, join } from 'node:path';
import { parse } from 'yaml';
import { writtenCases } from '../cases/written.ts';
import { contentRoot } from '../language/content-root.ts';
import type { Meeting, Scene, VoteOption } from '../meeting/meeting.ts';
import { meetingSchema, type WrittenMeeting, type WrittenScene } from '../meeting/schema.ts';
import type { Asked } from '../quiz/asked.ts';
import type { Passage } from '../quiz/passage.ts';
import { readPassage } from '../quiz/read-passage.ts';
import { chartNamed } from './chart-named.ts';
import { numberNamed } from './number-named.ts';
import { retrievalSet } from './question-bank.ts';

const folder = join(contentRoot(), 'en', 'meetings');

export interface PlannedMeeting extends Meeting {
  readonly about: string;
  readonly goal: string;
  readonly needs: readonly string[];
  readonly lesson: string;
}

let planned: readonly PlannedMeeting[] | undefined;

/** In the order of the list. @throws Error naming the file, for what the check of the content should have said before */
export function plannedMeetings(): readonly PlannedMeeting[] {
  planned ??= (existsSync(folder) ? readdirSync(folder) : [])
    .filter((name) => name.endsWith('.yaml'))
    .map((name) => {
      const read = meetingSchema.safeParse(parse(readFileSync(join(folder, name), 'utf8')));
      if (!read.success)
        throw new Error(`${join(folder, name)}: ${read.error.issues[0]?.message ?? 'unreadable'}`);
      return { order: read.data.order, meeting: meetingOf(basename(name, '.yaml'), read.data) };
    })
    .sort((a, b) => a.order - b.order)
    .map(({ meeting }) => meeting);
  return planned;
}

function meetingOf(id: string, written: WrittenMeeting): PlannedMeeting {
  const { title, minutes, about, goal, needs, lesson } = written;
  return {
    ...{ id, title, minutes, about, goal, needs, lesson },
    scenes: written.scenes.map(sceneOf),
  };
}

/** As it travels: an amount that reads alike in both systems is text, and no value before rounding goes along. */
const passage = (text: string): Passage => travelling(readPassage(text, numberNamed));
const travelling = (read: Passage): Passage =>
  read.map((piece) => {
    if (typeof piece === 'string') return piece;
    const { si, us } = piece;
    return si === us ? si : { si, us };
  });

/** As seen from the folder that the site stands in. */
const fromRoot = (address: string): string => address.replace(/^\//, '');

function sceneOf(scene: WrittenScene): Scene {
  const common = {
    heading: scene.heading,
    lines: ('lines' in scene ? (scene.lines ?? []) : []).map(passage),
    notes: passage(scene.notes),
  };
  switch (scene.kind) {
    case 'say':
      return { ...common, kind: 'say', drawing: scene.drawing };
    case 'picture':
      return {
        ...common,
        kind: 'picture',
        drawing: scene.drawing,
        ...(scene.chart !== undefined && { chart: chartNamed(scene.chart) }),
      };
    case 'simulation':
      return {
        ...common,
        kind: 'simulation',
        state: fromRoot(scene.state),
        run: scene.run && fromRoot(scene.run),
      };
    case 'vote':
      return {
        ...common,
        kind: 'vote',
        ...(scene.question === undefined ? ownVote(scene) : bankVote(scene.question)),
      };
    case 'case':
      return { ...common, kind: 'case', ...carOf(scene) };
  }
}

type VoteParts = {
  readonly stem: Passage;
  readonly options: readonly VoteOption[];
  readonly chart?: Asked['chart'];
};

function ownVote({ ask }: Extract<WrittenScene, { kind: 'vote' }>): VoteParts {
  if (ask === undefined) throw new Error('A vote without a question.');
  return {
    stem: passage(ask.stem),
    options: ask.options.map(({ text, correct, why }) => ({
      words: passage(text),
      correct,
      why: passage(why),
    })),
  };
}

function bankVote({ lesson, id }: { readonly lesson: string; readonly id: string }): VoteParts {
  const asked = retrievalSet(lesson).questions.find((question) => question.id === id);
  if (asked?.kind !== 'single')
    throw new Error(`"${id}" of "${lesson}" is no question to vote on.`);
  return {
    stem: travelling(asked.stem),
    ...(asked.chart !== undefined && { chart: asked.chart }),
    options: asked.options.map(({ words, correct, why }) => ({
      words: travelling(words),
      correct,
      why: travelling(why),
    })),
  };
}

function carOf(scene: Extract<WrittenScene, { kind: 'case' }>) {
  if (scene.week !== undefined) return { car: { week: scene.week } };
  const found = writtenCases().find(({ id }) => id === scene.case);
  if (found === undefined) throw new Error(`There is no case "${String(scene.case)}".`);
  return { car: { search: `?case=${found.id}` }, complaint: found.complaint };
}
