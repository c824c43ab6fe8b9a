/** What is in a package, and what each item is about, in the metadata that the standard takes over from IEEE 1484.12. */
import type { Element } from 'xast';
import { x } from 'xastscript';
import { language } from '../language/current.ts';
import type { Asked } from '../quiz/asked.ts';
import type { QtiBank, QtiLesson } from './bank.ts';
import { titleOf } from './item.ts';
import {
  chartPath,
  ITEM_TYPE,
  itemPath,
  LOM,
  PACKAGING,
  TEST_TYPE,
  testPath,
  TOOL,
} from './names.ts';
import { words } from './words.en.ts';

const said = (text: string): Element => x('string', { language: language.id }, text);

export const manifestOf = ({ lessons, system, version }: QtiBank): Element =>
  x('manifest', { xmlns: PACKAGING, identifier: `${TOOL}-${system}` }, [
    x('metadata', [
      x('schema', 'QTI Package'),
      x('schemaversion', '3.0.0'),
      x('lom', { xmlns: LOM }, [
        x('general', [
          x('title', [said(words.bank.title)]),
          x('language', language.id),
          x('description', [said(words.bank.about)]),
        ]),
        x('lifeCycle', [x('version', [said(version)])]),
        x('rights', [x('description', [said(words.bank.rights)])]),
      ]),
    ]),
    x('organizations'),
    x('resources', [
      ...lessons.map(testResource),
      ...lessons.flatMap((lesson) => lesson.questions.map((asked) => itemResource(asked, lesson))),
    ]),
  ]);

const testResource = ({ id, questions }: QtiLesson): Element =>
  x('resource', { identifier: `test-${id}`, type: TEST_TYPE, href: testPath(id) }, [
    x('file', { href: testPath(id) }),
    ...questions.map((asked) => x('dependency', { identifierref: `item-${asked.id}` })),
  ]);

const itemResource = (asked: Asked, { objectives }: QtiLesson): Element =>
  x('resource', { identifier: `item-${asked.id}`, type: ITEM_TYPE, href: itemPath(asked.id) }, [
    x('metadata', [
      x('lom', { xmlns: LOM }, [
        x('general', [
          x('title', [said(titleOf(asked.id))]),
          x('language', language.id),
          x('keyword', [said(asked.concept.replaceAll('-', ' '))]),
        ]),
        x('classification', [
          x('purpose', [x('source', 'LOMv1.0'), x('value', 'educational objective')]),
          ...asked.objectives.map((id) =>
            x('taxonPath', [
              x('source', [said(words.bank.objectives)]),
              x('taxon', [
                x('id', id),
                x('entry', [said(objectives.find((one) => one.id === id)?.text ?? id)]),
              ]),
            ]),
          ),
        ]),
      ]),
    ]),
    x('file', { href: itemPath(asked.id) }),
    ...(asked.chart === undefined ? [] : [x('file', { href: chartPath(asked.id) })]),
  ]);
