/** A <Sum> that cannot be read, names no number, is not true or does not close is told at its place. */
import { numberNamed } from '../number-named.ts';
import { printSum } from '../sum/print-sum.ts';
import type { Placed } from './fault.ts';
import { tagsIn } from './lesson-form.ts';
import { prop, propAt } from './mdx-tags.ts';
import type { MdxText } from './mdx-text.ts';

export const checkSums = ({ tree }: MdxText): readonly Placed[] =>
  tagsIn(tree).flatMap((tag) => {
    const of = tag.name === 'Sum' ? prop(tag, 'of') : undefined;
    if (of === undefined) return [];
    try {
      for (const system of ['si', 'us'] as const) printSum(of, numberNamed, system);
      return [];
    } catch (error) {
      return [{ offset: propAt(tag, 'of'), sentence: (error as Error).message }];
    }
  });
