import type { z } from 'astro/zod';
import { complaints } from './check/shape.ts';
import { tagForms, type TagName } from './tag-forms.ts';

/**
 * Astro checks neither that a tag in MDX gets the props it needs nor that it knows those it gets: a misspelt one would pass
 * the build and lose its meaning on the page. The check of the content tells file and line; this holds for every other way
 * in which a tag can be drawn.
 */
export function parseProps<T extends TagName>(
  tag: T,
  props: Record<string, unknown>,
  page: URL,
): z.output<(typeof tagForms)[T]['props']> {
  const schema = tagForms[tag].props;
  const result = schema.safeParse(props);
  if (result.success) return result.data as z.output<(typeof tagForms)[T]['props']>;
  const wrong = complaints(schema, props).map(({ sentence }) => sentence);
  throw new Error(`<${tag}> on ${page.pathname}: ${wrong.join(' ')}`);
}
