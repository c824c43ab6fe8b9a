/** Questions out, as a content package of QTI 3.0: a zip file with a manifest, a test for each lesson, an item for each question. */
import { strToU8, zipSync } from 'fflate';
import type { Element } from 'xast';
import { toXml } from 'xast-util-to-xml';
import { x } from 'xastscript';
import type { QtiBank } from './bank.ts';
import { chartSvg } from './chart.ts';
import { itemOf } from './item.ts';
import { manifestOf } from './manifest.ts';
import { chartPath, itemPath, MANIFEST, testPath } from './names.ts';
import { testOf } from './test.ts';

const document = (element: Element): string =>
  toXml(
    x(null, [
      { type: 'instruction', name: 'xml', value: 'version="1.0" encoding="UTF-8"' },
      { type: 'text', value: '\n' },
      element,
    ]),
    { closeEmptyElements: true },
  );

export function qtiFiles(bank: QtiBank): ReadonlyMap<string, string> {
  const { system, version } = bank;
  return new Map([
    [MANIFEST, document(manifestOf(bank))],
    ...bank.lessons.map(
      (lesson) => [testPath(lesson.id), document(testOf(lesson, system, version))] as const,
    ),
    ...bank.lessons.flatMap(({ questions }) =>
      questions.flatMap((asked) => [
        [itemPath(asked.id), document(itemOf(asked, system, version))] as const,
        ...(asked.chart === undefined
          ? []
          : [[chartPath(asked.id), document(chartSvg(asked.chart, system))] as const]),
      ]),
    ),
  ]);
}

/** The same questions give the same bytes: a zip file remembers the time unless it is told one. */
export const writeQti = (bank: QtiBank): Uint8Array<ArrayBuffer> =>
  zipSync(Object.fromEntries([...qtiFiles(bank)].map(([path, text]) => [path, strToU8(text)])), {
    level: 9,
    mtime: new Date(1980, 0, 1),
  });
