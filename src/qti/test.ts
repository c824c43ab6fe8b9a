/** The questions of one lesson as a test, to be taken in any order. */
import type { Element } from 'xast';
import { x } from 'xastscript';
import { language } from '../language/current.ts';
import type { UnitSystem } from '../quantity/unit-system.ts';
import type { QtiLesson } from './bank.ts';
import { ASI, itemPath, named, SCORE, TOOL } from './names.ts';

export const testOf = (lesson: QtiLesson, system: UnitSystem, version: string): Element =>
  x(
    'qti-assessment-test',
    {
      xmlns: ASI,
      identifier: named(lesson.id),
      title: lesson.title,
      'xml:lang': language.id,
      'tool-name': TOOL,
      'tool-version': version,
      'data-units': system,
    },
    [
      x(
        'qti-outcome-declaration',
        { identifier: SCORE, cardinality: 'single', 'base-type': 'float' },
        [x('qti-default-value', [x('qti-value', '0')])],
      ),
      x(
        'qti-test-part',
        { identifier: 'part', 'navigation-mode': 'nonlinear', 'submission-mode': 'individual' },
        [
          x('qti-item-session-control', { 'max-attempts': '1', 'show-feedback': 'true' }),
          x(
            'qti-assessment-section',
            { identifier: 'questions', title: lesson.title, visible: 'true' },
            lesson.questions.map(({ id }) =>
              x('qti-assessment-item-ref', { identifier: named(id), href: itemPath(id) }),
            ),
          ),
        ],
      ),
      x('qti-outcome-processing', [
        x('qti-set-outcome-value', { identifier: SCORE }, [
          x('qti-sum', [x('qti-test-variables', { 'variable-identifier': SCORE })]),
        ]),
      ]),
    ],
  );
