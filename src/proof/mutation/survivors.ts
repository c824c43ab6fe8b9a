/** What no test notices, and why that is borne: survivors.json. */
import { z } from 'zod';
import { toldKey, type Told } from './mutants.ts';
import given from './survivors.json' with { type: 'json' };

const one = z.strictObject({
  line: z.string(),
  from: z.string(),
  to: z.string(),
  nth: z.int().min(1).optional(),
  why: z.string().min(20),
});
const list = z.record(z.string(), z.array(one));
export type Explained = Told & { readonly why: string };

export const explainedSurvivors = (): readonly Explained[] =>
  Object.entries(list.parse(given)).flatMap(([file, mutants]) =>
    mutants.map(({ nth = 0, ...rest }) => ({ file, nth, ...rest })),
  );

export const sentence = ({ file, line, from, to }: Told): string =>
  `${file}: in "${line}", ${from} became ${to}`;

/** One sentence for each survivor without a reason, and for each reason whose change is noticed or cannot be made any more. */
export function unlisted(
  survivors: readonly Told[],
  noticed: readonly Told[],
  all: readonly Told[],
  explained: readonly Explained[],
): readonly string[] {
  const keys = (told: readonly Told[]): ReadonlySet<string> => new Set(told.map(toldKey));
  const [known, seen, possible] = [keys(explained), keys(noticed), keys(all)];
  return [
    ...survivors
      .filter((told) => !known.has(toldKey(told)))
      .map((told) => `${sentence(told)}: no test noticed, and survivors.json does not say why.`),
    ...explained
      .filter((told) => seen.has(toldKey(told)))
      .map((told) => `${sentence(told)}: has a reason in survivors.json, but a test notices it.`),
    ...explained
      .filter((told) => !possible.has(toldKey(told)))
      .map(
        (told) => `${sentence(told)}: has a reason in survivors.json, but cannot be made any more.`,
      ),
  ];
}
