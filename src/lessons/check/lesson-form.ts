/** The parts of a lesson, in their order, and what each must hold. Explained in DEVELOPERS.md, "add a lesson". */
import type { Nodes, RootContent } from 'mdast';
import { slug } from '../slug.ts';
import type { Placed } from './fault.ts';
import type { Known } from './known.ts';
import { isTag, prop, propAt, startOf } from './mdx-tags.ts';
import type { MdxText, Tag } from './mdx-text.ts';

const order = ['Section', 'Mistake', 'Recap', 'Tasks', 'Retrieval'];
const kinds = ['finish', 'diagnose', 'decide'];
/** Characters between the tags of a solution: a bare answer is shorter than an answer with its reason. */
const REASONED = 40;
const orderWords = 'The order is: sections, <Mistake>, <Recap>, <Tasks>, <Retrieval>.';

export function checkLessonForm(mdx: MdxText, lesson: string, known: Known): readonly Placed[] {
  const tags = tagsIn(mdx.tree);
  return [
    ...parts(mdx, lesson),
    ...tags.filter(({ name }) => name === 'Recap').flatMap(recap),
    ...tags.filter(({ name }) => name === 'Tasks').flatMap((tag) => tasks(tag, mdx.text)),
    ...terms(tags, lesson, known),
    ...sameAddress(tags),
  ];
}

export function tagsIn(node: Nodes): readonly Tag[] {
  const inner = 'children' in node ? node.children.flatMap((child: Nodes) => tagsIn(child)) : [];
  return isTag(node) ? [node, ...inner] : inner;
}

function parts({ tree, text }: MdxText, lesson: string): readonly Placed[] {
  const faults: Placed[] = [];
  const seen: string[] = [];
  for (const node of tree.children) {
    const offset = startOf(node);
    if (isProse(node)) {
      faults.push({
        offset,
        sentence: 'These words stand in no part of the lesson. Put them inside a <Section>.',
      });
    }
    if (!isTag(node) || !order.includes(node.name ?? '')) continue;
    const name = node.name ?? '';
    const late = seen.find((other) => order.indexOf(other) > order.indexOf(name));
    if (late !== undefined)
      faults.push({ offset, sentence: `<${name}> stands after <${late}>. ${orderWords}` });
    if (name !== 'Section' && seen.includes(name))
      faults.push({ offset, sentence: `<${name}> stands here a second time. A lesson has one.` });
    if (name === 'Retrieval' && ![lesson, undefined].includes(prop(node, 'lesson')))
      faults.push({
        offset: propAt(node, 'lesson'),
        sentence: `<Retrieval> asks the questions of "${prop(node, 'lesson') ?? ''}". This lesson is "${lesson}": write <Retrieval lesson="${lesson}" />.`,
      });
    seen.push(name);
  }
  for (const name of order.filter((part) => !seen.includes(part)))
    faults.push({
      offset: text.trimEnd().length,
      sentence: `The lesson has no <${name}>. ${orderWords}`,
    });
  return faults;
}

const isProse = (node: RootContent): boolean =>
  ['paragraph', 'list', 'table', 'blockquote', 'heading', 'math', 'code'].includes(node.type);

function recap(tag: Tag): readonly Placed[] {
  const lines = tag.children.flatMap((child) =>
    child.type === 'list' ? child.children : [],
  ).length;
  if (lines >= 3 && lines <= 7) return [];
  const sentence = `The recap has ${lines} ${lines === 1 ? 'line' : 'lines'}. Write three to seven, each beginning with "- ".`;
  return [{ offset: startOf(tag), sentence }];
}

function tasks(tag: Tag, text: string): readonly Placed[] {
  const faults: Placed[] = [];
  const found = tagsIn(tag).filter(({ name }) => name === 'Task');
  let last = 0;
  for (const task of found) {
    const at = kinds.indexOf(prop(task, 'kind') ?? '');
    if (at !== -1 && at < last)
      faults.push({
        offset: propAt(task, 'kind'),
        sentence: `A task to ${kinds[at] ?? ''} stands after one to ${kinds[last] ?? ''}. First all to finish, then to diagnose, then to decide.`,
      });
    last = Math.max(last, at);
    const solution = tagsIn(task).find(({ name }) => name === 'Solution');
    if (solution === undefined)
      faults.push({
        offset: startOf(task),
        sentence: 'This task has no <Solution>: its answer, and why.',
      });
    else if (text.slice(startOf(solution), solution.position?.end.offset).length < REASONED + 21)
      faults.push({
        offset: startOf(solution),
        sentence: 'This answer has no reason. Say why, too.',
      });
  }
  // A misspelt kind has been told already, and is probably the one that is missing.
  const misspelt = found.some((task) => !kinds.includes(prop(task, 'kind') ?? ''));
  for (const kind of misspelt ? [] : kinds) {
    if (!found.some((task) => prop(task, 'kind') === kind))
      faults.push({
        offset: startOf(tag),
        sentence: `The lesson has no task of kind "${kind}". It has at least one each to finish, to diagnose and to decide.`,
      });
  }
  return faults;
}

function terms(tags: readonly Tag[], lesson: string, known: Known): readonly Placed[] {
  const seen = new Set<string>();
  return tags.flatMap((tag) => {
    const id = tag.name === 'Term' ? prop(tag, 'id') : undefined;
    if (id === undefined) return [];
    const offset = startOf(tag);
    if (seen.has(id))
      return [
        {
          offset,
          sentence: `"${id}" was explained before in this lesson. Only its first use is a <Term>; write plain words here.`,
        },
      ];
    seen.add(id);
    const by = known.terms.get(id);
    if (by === undefined || !known.lessons.has(by)) return [];
    if ((known.lessons.get(by) ?? 0) <= (known.lessons.get(lesson) ?? Infinity)) return [];
    return [
      {
        offset,
        sentence: `"${id}" is introduced by "${by}", a later lesson. Use other words here, or change "lesson" in its glossary entry.`,
      },
    ];
  });
}

/** Titles become addresses on the page, and one address can lead to one place only. */
function sameAddress(tags: readonly Tag[]): readonly Placed[] {
  const seen = new Map<string, string>();
  return tags.flatMap((tag) => {
    const title = prop(tag, 'title');
    // A fold is no heading.
    if (title === undefined || tag.name === 'GoDeeper') return [];
    const address = prop(tag, 'id') ?? slug(title);
    const before = seen.get(address);
    seen.set(address, title);
    if (before === undefined) return [];
    return [
      {
        offset: propAt(tag, 'title'),
        sentence: `"${title}" gets the same address, #${address}, as "${before}" above. Titles differ within a lesson.`,
      },
    ];
  });
}
