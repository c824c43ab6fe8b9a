/** A car with one hidden fault: readings that one opens, each with its minutes, and the fault to name. A player counts no minutes. */
import type { Element } from 'xast';
import { x } from 'xastscript';
import type { UnitSystem } from '../quantity/unit-system.ts';
import type { AskedCase, AskedReading } from '../quiz/asked.ts';
import { minutesOf } from '../quiz/case-minutes.ts';
import { explainedOptions, optionNodes, readOptions, rightOf } from './choice.ts';
import { declaration } from './declaration.ts';
import { feedback, toldIn } from './feedback.ts';
import { RESPONSE } from './names.ts';
import { passageIn, passageNodes, stemIn, stemNode } from './passage.ts';
import type { Parts } from './parts.ts';
import { given, key, processing } from './rules.ts';
import { words } from './words.en.ts';
import { all, attribute, classed, jsonIn, maybe, one } from './xml.ts';

/** Before the id of a reading, where it stands among options: no id of theirs has a dot. */
const READING = '.reading ';

/** What the standard has no place for: the minutes shown are those of the reading with all its set-ups. */
const priceOf = ({ id, minutes, warmth, setUps }: AskedReading) => ({
  'data-reading': id,
  'data-minutes': String(minutes),
  ...(warmth !== undefined && { 'data-warmth': warmth }),
  'data-set-ups': JSON.stringify(setUps.map((one) => ({ id: one.id, minutes: one.minutes }))),
});

export function caseParts(asked: AskedCase, system: UnitSystem): Parts {
  const { arrives, cheapest, options, readings, stem } = asked;
  const deciding = cheapest.flatMap((id) => readings.find((reading) => reading.id === id) ?? []);
  const others = readings.filter((reading) => !deciding.includes(reading));
  const told = (mark: string) => (reading: AskedReading) => ({
    id: `${READING}${reading.id}`,
    mark,
    words: [...reading.words, ': ', ...reading.reads],
    why: reading.why,
  });
  const explained = [
    ...explainedOptions(options),
    ...deciding.map(told(words.decides)),
    ...others.map(told(words.leftOut)),
  ];
  const minutes = String(minutesOf(deciding, arrives));
  const verdict = (text: string): string => `${text} ${words.cheapest({ minutes })}`;
  return {
    declaration: declaration('single', 'identifier', rightOf(options)),
    body: [
      stemNode(stem, system),
      x('p', words.openReadings),
      ...readings.map((reading) => readingNode(reading, asked, system)),
      x(
        'qti-choice-interaction',
        {
          'response-identifier': RESPONSE,
          shuffle: 'true',
          'max-choices': '1',
          'min-choices': '1',
          'data-arrives': arrives,
          'data-cheapest': JSON.stringify(cheapest),
        },
        [x('qti-prompt', [x('p', words.whatIsIt)]), ...optionNodes(options, system)],
      ),
    ],
    processing: processing([{ id: 'right', score: 1, when: x('qti-match', [given(), key()]) }], {
      id: 'wrong',
      score: 0,
    }),
    feedback: [
      feedback('right', verdict(words.right), explained, system),
      feedback('wrong', verdict(words.notThatOne), explained, system),
    ],
  };
}

const readingNode = (reading: AskedReading, { arrives }: AskedCase, system: UnitSystem): Element =>
  x('details', priceOf(reading), [
    x('summary', [
      x('span', { class: 'words' }, passageNodes(reading.words, system)),
      words.alone({ minutes: String(minutesOf([reading], arrives)) }),
    ]),
    x('p', { class: 'reads' }, passageNodes(reading.reads, system)),
  ]);

export function readCase(item: Element) {
  const interaction = one(item, 'qti-choice-interaction');
  const told = toldIn(item);
  return {
    stem: stemIn(item),
    arrives: attribute(interaction, 'data-arrives'),
    readings: all(item, 'details')
      .filter((details) => 'data-reading' in details.attributes)
      .map((details) => {
        const id = attribute(details, 'data-reading');
        return {
          id,
          minutes: Number(attribute(details, 'data-minutes')),
          warmth: maybe(details, 'data-warmth'),
          setUps: jsonIn(details, 'data-set-ups'),
          words: passageIn(classed(details, 'span', 'words')),
          reads: passageIn(classed(details, 'p', 'reads')),
          why: told.get(`${READING}${id}`)?.why,
        };
      }),
    options: readOptions(item),
    cheapest: jsonIn(interaction, 'data-cheapest'),
  };
}
