/** Fetches questions and draws the sheets. Loaded when somebody asks for one, so that the form is there at once. */
import { makeSheets, type Sheets } from '../quiz/on-paper/sheets.ts';
import { versionOf } from '../quiz/on-paper/version.ts';
import { readQuestionSet } from '../quiz/question-set.ts';
import { load, type Miss } from '../rounds/load.ts';
import { questionsAddress } from '../widgets/retrieval/address.ts';
import type { Choice } from './choice.ts';

export type Drawn = { readonly sheets: Sheets; readonly version: string } | { readonly miss: Miss };

/** @param base the folder that the site stands in */
export async function draw(
  base: string,
  { lessons, count, seed }: Pick<Choice, 'lessons' | 'count' | 'seed'>,
): Promise<Drawn> {
  const all = await Promise.all(
    // By name, so that another order of lessons on the page changes no sheet.
    lessons
      .map(({ id }) => id)
      .sort()
      .map((id) =>
        load(questionsAddress(base, id), (text) => ({ set: readQuestionSet(text, id), text })),
      ),
  );
  const missing = all.find((one) => 'miss' in one);
  if (missing !== undefined) return missing;
  const got = all.flatMap((one) => ('got' in one ? one.got : []));
  return {
    sheets: makeSheets(
      got.map(({ set }) => set),
      count,
      seed,
    ),
    version: versionOf(got.map(({ text }) => text)),
  };
}
