/** Everything wrong in a folder of content, file by file, in the order of the folders. */
import { existsSync, readdirSync } from 'node:fs';
import { basename, extname, join } from 'node:path';
import { checkSource, checkTerm } from './entries.ts';
import type { Fault } from './fault.ts';
import { endings, filesIn, folderOf, knownIn, readIn, type Folder } from './known.ts';
import { checkLesson, checkPage } from './lesson.ts';
import { checkMeeting, type MeetingTargets } from './meetings.ts';
import { checkMoved } from './moved.ts';
import { checkQuestions, questionsOf } from './questions.ts';

/** The language that all others are translated from. */
const SOURCE = 'en';

/** All of a folder of content: it holds lessons itself, or a folder for each language that does. */
export function checkContent(root: string): readonly Fault[] {
  const languages = existsSync(root)
    ? readdirSync(root).filter((name) => existsSync(join(root, name, 'lessons')))
    : [];
  if (languages.length === 0) return checkLanguage(root, root);
  return languages.flatMap((name) => checkLanguage(join(root, name), join(root, SOURCE)));
}

function checkLanguage(root: string, source: string): readonly Fault[] {
  const known = knownIn(root, source);
  const targets = targetsIn(root);
  return [
    ...(Object.keys(endings) as Folder[]).flatMap((folder) => unread(root, folder)),
    ...readIn(root, 'lessons').flatMap((file) => checkLesson(file, known)),
    ...readIn(root, 'pages').flatMap((file) => checkPage(file, known)),
    ...checkQuestions(readIn(root, 'questions'), known),
    ...readIn(root, 'glossary').flatMap((file) => checkTerm(file, known)),
    ...readIn(root, 'sources').flatMap(checkSource),
    ...readIn(root, 'meetings').flatMap((file) => checkMeeting(file, known, targets)),
    ...checkMoved(root, known),
  ];
}

/** What meetings point at; a question that cannot be read is told where questions are. */
const targetsIn = (root: string): MeetingTargets => ({
  cases: existsSync(join(root, 'cases'))
    ? readdirSync(join(root, 'cases')).map((name) => basename(name, '.yaml'))
    : [],
  questions: questionsOf(readIn(root, 'questions')),
});

/** A lesson saved as .md would never appear, and nobody would be told. */
function unread(root: string, folder: Folder): readonly Fault[] {
  return filesIn(root, folder)
    .filter((name) => extname(name) !== endings[folder])
    .filter((name) => name !== 'README.md' && !name.startsWith('.'))
    .map((name) => ({
      file: `${folderOf(root, folder)}/${name}`,
      line: 1,
      column: 1,
      sentence: `The site does not read this file: what stands in ${folder}/ ends in ${endings[folder]}.`,
    }));
}
