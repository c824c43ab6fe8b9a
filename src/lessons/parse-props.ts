import type { z } from 'astro/zod';

/**
 * Astro checks neither that a tag in MDX gets the props it needs nor that it knows those it gets:
 * a misspelt one would pass the build and lose its meaning on the page. So each tag asks here.
 */
export function parseProps<S extends z.ZodObject>(
  tag: string,
  schema: S,
  props: Record<string, unknown>,
  page: URL,
): z.output<S> {
  const result = schema.strict().safeParse(props);
  if (result.success) return result.data as z.output<S>;
  const allowed = Object.keys(schema.shape);
  const wrong = result.error.issues.map((issue) => {
    if (issue.code === 'unrecognized_keys') {
      const keys = issue.keys.map((key) => `"${key}"`).join(', ');
      return `it does not know ${keys}`;
    }
    const name = issue.path.join('.');
    const given = props[name] === undefined ? 'is missing' : `is ${JSON.stringify(props[name])}`;
    return `"${name}" ${given} (${issue.message})`;
  });
  const knows = allowed.length === 0 ? 'It takes no props.' : `Its props: ${allowed.join(', ')}.`;
  throw new Error(`<${tag}> on ${page.pathname}: ${wrong.join('; ')}. ${knows}`);
}
