/** Tags known, with the props they know, where they may stand, and ids that lead somewhere. */
import type { Node } from 'mdast';
import { visitParents } from 'unist-util-visit-parents';
import { tagForms, type TagForm } from '../tag-forms.ts';
import type { Placed } from './fault.ts';
import type { Known } from './known.ts';
import type { MdxText, Tag } from './mdx-text.ts';
import { allowedWords } from './nearest.ts';
import { complaints } from './shape.ts';

const forms: Readonly<Record<string, TagForm>> = tagForms;

export const isTag = (node: { readonly type: string }): node is Tag =>
  node.type === 'mdxJsxFlowElement' || node.type === 'mdxJsxTextElement';

export const formOf = (tag: Tag): TagForm | undefined => forms[tag.name ?? ''];
export const startOf = (node: Node): number => node.position?.start.offset ?? 0;

/** The value of a prop that is plain text, as all of ours are. */
export function prop(tag: Tag, name: string): string | undefined {
  const found = tag.attributes.find((a) => a.type === 'mdxJsxAttribute' && a.name === name);
  return typeof found?.value === 'string' ? found.value : undefined;
}
export const propAt = (tag: Tag, name: string): number => {
  const found = tag.attributes.find((a) => a.type === 'mdxJsxAttribute' && a.name === name);
  return found?.position?.start.offset ?? startOf(tag);
};

export function checkTags({ text, tree }: MdxText, known: Known): readonly Placed[] {
  const faults: Placed[] = [];
  visitParents(tree, (node, parents) => {
    const say = (sentence: string, offset = startOf(node)) =>
      void faults.push({ offset, sentence });
    if (node.type === 'mdxjsEsm')
      say('A lesson has no import or export: its tags are known by name.');
    if (/^mdx\w*Expression$/.test(node.type) && !/^\{\/\*[^]*\*\/\}$/.test(source(text, node)))
      say('Braces hold code, and a lesson has none. Leave them out; {/* a note */} may stand.');
    if (!isTag(node)) return;
    const form = formOf(node);
    const name = node.name ?? '';
    if (form === undefined) {
      const html = /^[a-z]/.test(name) ? 'A lesson has no HTML of its own. ' : '';
      say(`${html}There is no tag <${name}>. ${allowedWords(name, Object.keys(forms))}`);
      return;
    }
    faults.push(...wrongProps(node, form), ...wrongIds(node, known));
    if (form.holds && source(text, node).endsWith('/>'))
      say(`<${name}> holds words: write <${name}>…</${name}>.`);
    if (!form.holds && node.children.length > 0)
      say(`<${name}> holds nothing: close it at once, as in <${name} … />.`);
    if (form.stands === 'alone' && node.type === 'mdxJsxTextElement')
      say(
        `<${name}> stands in the middle of a line or paragraph. It is a block: put it on a line of its own, with a blank line before and after.`,
      );
    const parent = parents.findLast(isTag)?.name ?? 'the lesson';
    if (form.inside !== undefined && !form.inside.includes(parent))
      say(
        `<${name}> stands in ${parent === 'the lesson' ? 'no other tag' : `<${parent}>`}. It belongs ${belongs(form.inside)}.`,
      );
    if (parent === 'Tasks' && name !== 'Task')
      say(`<${name}> stands in <Tasks>, which holds <Task>s alone. Put it inside a <Task>.`);
  });
  return faults;
}

const belongs = (inside: readonly string[]): string =>
  inside
    .map((name) => (name === 'the lesson' ? 'at the top level of the lesson' : `in a <${name}>`))
    .join(' or ');

const source = (text: string, node: Node): string =>
  text.slice(startOf(node), node.position?.end.offset);

function wrongProps(tag: Tag, form: TagForm): readonly Placed[] {
  const props: Record<string, unknown> = {};
  for (const attribute of tag.attributes) {
    const offset = attribute.position?.start.offset ?? startOf(tag);
    if (attribute.type === 'mdxJsxExpressionAttribute' || typeof attribute.value === 'object') {
      if (attribute.type === 'mdxJsxExpressionAttribute' || attribute.value !== null)
        return [
          {
            offset,
            sentence: 'A prop is text in quotes, as in id="line-pressure", not code in braces.',
          },
        ];
    }
    props[attribute.name] = attribute.value ?? true;
  }
  return complaints(form.props, props).map(({ path, key, sentence }) => ({
    offset: propAt(tag, key ?? String(path[0] ?? '')),
    sentence: `<${tag.name ?? ''}>: ${sentence}`,
  }));
}

function wrongIds(tag: Tag, known: Known): readonly Placed[] {
  const id = prop(tag, 'id');
  if (id === undefined) return [];
  const places: Readonly<Record<string, readonly [ReadonlyMap<string, unknown>, string, string]>> =
    {
      Term: [known.terms, 'glossary entry', known.folders.glossary],
      Src: [known.sources, 'source', known.folders.sources],
      Num: [known.numbers, 'number', 'src/numbers'],
    };
  const [ids, what, where] = places[tag.name ?? ''] ?? [];
  if (ids === undefined || ids.has(id)) return [];
  return [
    {
      offset: propAt(tag, 'id'),
      sentence: `There is no ${what ?? ''} "${id}". ${allowedWords(id, ids.keys(), where)}`,
    },
  ];
}
