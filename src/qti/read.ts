/**
 * A package back into questions. It takes what this site wrote and nothing else: what was read is written once more, and must
 * come out as it went in. So an answer key that was changed in one place of three is found without a rule for it.
 */
import { toXml } from 'xast-util-to-xml';
import type { Element, Root } from 'xast';
import type { UnitSystem } from '../quantity/unit-system.ts';
import type { Asked } from '../quiz/asked.ts';
import { readQuestionSet } from '../quiz/question-set.ts';
import type { QtiBank, QtiLesson } from './bank.ts';
import { readItem } from './item.ts';
import { MANIFEST, PACKAGING, TEST_TYPE, TOOL, unnamed } from './names.ts';
import { Refusal } from './refusal.ts';
import { unpack, type Tree } from './unpack.ts';
import { words } from './words.en.ts';
import { qtiFiles } from './write.ts';
import { all, attribute, maybe, one, textOf } from './xml.ts';
import { fromXml } from 'xast-util-from-xml';

const { refused } = words;

/** @throws Refusal with a sentence that says what is wrong */
export function readQti(bytes: Uint8Array): QtiBank {
  try {
    return read(bytes);
  } catch (error) {
    // What nests a million deep breaks whatever walks it.
    throw error instanceof RangeError ? new Refusal(refused.unreadable) : error;
  }
}

function read(bytes: Uint8Array): QtiBank {
  const tree = unpack(bytes);
  const manifest = all(fileOf(tree, MANIFEST), 'manifest')[0];
  if (manifest?.attributes['xmlns'] !== PACKAGING) throw new Refusal(refused.notQti);
  const tests = all(manifest, 'resource')
    .filter((resource) => maybe(resource, 'type') === TEST_TYPE)
    .map((resource) => one(fileOf(tree, attribute(resource, 'href')), 'qti-assessment-test'));
  const [first] = tests;
  if (first === undefined || maybe(first, 'tool-name') !== TOOL) throw new Refusal(refused.foreign);
  const objectives = objectivesIn(manifest);
  const bank: QtiBank = {
    system: systemOf(first),
    version: attribute(first, 'tool-version'),
    lessons: tests.map((test) => lessonOf(test, tree, objectives)),
  };
  compare(tree, bank);
  return bank;
}

function fileOf(tree: Tree, path: string): Root {
  const root = tree.get(path);
  if (root === undefined) throw new Refusal(refused.missing({ file: path }));
  return root;
}

function systemOf(test: Element): UnitSystem {
  const system = maybe(test, 'data-units');
  if (system !== 'si' && system !== 'us') throw new Refusal(refused.noSystem);
  return system;
}

const objectivesIn = (manifest: Element): ReadonlyMap<string, string> =>
  new Map(
    all(manifest, 'taxon').map((taxon) => [
      textOf(one(taxon, 'id')),
      textOf(one(one(taxon, 'entry'), 'string')),
    ]),
  );

function lessonOf(test: Element, tree: Tree, texts: ReadonlyMap<string, string>): QtiLesson {
  const id = unnamed(attribute(test, 'identifier'));
  const items = all(test, 'qti-assessment-item-ref').map((ref) =>
    readItem(one(fileOf(tree, attribute(ref, 'href')), 'qti-assessment-item')),
  );
  const questions = checked(id, items);
  const used = new Set(questions.flatMap((asked) => asked.objectives));
  return {
    id,
    title: attribute(test, 'title'),
    // In the order of its own questions: another lesson may aim at the same ones in another.
    objectives: [...used].flatMap((one) => {
      const text = texts.get(one);
      return text === undefined ? [] : [{ id: one, text }];
    }),
    questions,
  };
}

/** Whether they are questions is for the reader of the site's own files to say. */
function checked(lesson: string, questions: readonly object[]): readonly Asked[] {
  try {
    return readQuestionSet(JSON.stringify({ form: 1, lesson, questions, objectives: [] }), lesson)
      .questions;
  } catch (error) {
    throw new Refusal(refused.question({ why: error instanceof Error ? error.message : '' }));
  }
}

function compare(tree: Tree, bank: QtiBank): void {
  const expected = qtiFiles(bank);
  for (const [path, root] of tree) {
    const text = expected.get(path);
    if (text === undefined) throw new Refusal(refused.stray({ file: path }));
    const there = toXml(root);
    const ours = toXml(fromXml(text));
    if (there === ours) continue;
    let at = 0;
    while (at < ours.length && ours[at] === there[at]) at += 1;
    const near = (whole: string): string => whole.slice(Math.max(0, at - 20), at + 30);
    throw new Refusal(
      refused.changed({
        file: path,
        version: bank.version,
        there: near(there),
        expected: near(ours),
      }),
    );
  }
}
