/** What is folded until a run must name a simulation that the reader has passed: below it nothing could be run. */
import { simulations } from '../simulations.ts';
import type { Placed } from './fault.ts';
import { tagsIn } from './lesson-form.ts';
import { prop, propAt } from './mdx-tags.ts';
import type { MdxText } from './mdx-text.ts';
import { allowedWords } from './nearest.ts';

export function checkAfterRun({ tree }: MdxText): readonly Placed[] {
  const passed: string[] = [];
  return tagsIn(tree).flatMap((tag) => {
    const here = simulations[tag.name ?? ''];
    if (here !== undefined) passed.push(here.id);
    const of = tag.name === 'AfterRun' ? prop(tag, 'of') : undefined;
    if (of === undefined || passed.includes(of)) return [];
    const why = 'What opens after a run stands below its simulation.';
    const sentence =
      passed.length === 0
        ? `<AfterRun of="${of}"> has no simulation above it. ${why}`
        : `No simulation above this <AfterRun> is called "${of}". ${why} ${allowedWords(of, passed)}`;
    return [{ offset: propAt(tag, 'of'), sentence }];
  });
}
