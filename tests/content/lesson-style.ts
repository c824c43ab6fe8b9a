/**
 * How the lessons sound, as figures: words to a sentence, and how many sentences are clipped. Tables, headings and formulas are
 * no sentences; the tasks of "Your turn", full of short instructions, are not counted.
 */
import { plainProse } from './lesson-prose.ts';
import { sentencesIn } from './reading-grade.ts';

export interface Style {
  /** Words to a sentence. */
  readonly mean: number;
  /** Percent of sentences of five words or fewer. */
  readonly clipped: number;
}

/** What the course asks for. */
export const MEAN = [10, 16] as const;
export const CLIPPED = 15;
const FEW = 5;

export function styleOf(body: string, hook: string): Style {
  const tasks = body.indexOf('<Tasks>');
  const text = `${hook}\n\n${plainProse(tasks < 0 ? body : body.slice(0, tasks))}`;
  const lengths = sentencesIn(text).map(({ length }) => length);
  const words = lengths.reduce((sum, one) => sum + one, 0);
  return {
    mean: words / lengths.length,
    clipped: (100 * lengths.filter((length) => length <= FEW).length) / lengths.length,
  };
}

/** Words that mean something else to the trade, or nothing, and lines that nobody says. */
const BANNED: readonly (readonly [RegExp, string])[] = [
  [/free play/i, 'that is lash in a joint: say "on your own", or what is meant'],
  [
    /(?<!\b(?:a|road|long|short|test|day) )\btrip(?:s|ped|ping)?\b(?! (?:you|him|them|over|up)\b)/i,
    'a controller sets a code or passes a limit',
  ],
  [
    /(?:water|kitchen|garden|leaky|dripping|open the|turn the) tap\b/i,
    'that is a faucet; a tap is where a gauge screws in',
  ],
  [/\bsound (?:car|box|transmission|one|unit)\b/i, 'beside engine sounds: say healthy, or good'],
  [/gauge man/i, 'whoever reads the gauge has a name: technician, you'],
  [/\bdrinks?\b/i, 'a leak takes, loses or passes fluid'],
  [/hangs? on\b/i, 'say holds, or what it does'],
  [/clutch kit/i, 'say clutch job, or rebuild kit where one is meant'],
  [/\bparts from\b/i, 'say leaves, or comes apart'],
  [/go(?:es)? hungry/i, 'say runs short'],
  [/the raise\b/i, 'say the higher command'],
  [/\basks of\b/i, 'say needs, or takes'],
  [/the box by cable/i, 'nobody says so'],
  [/of the worst there is/i, 'nobody says so'],
  [/air goes off at/i, 'nobody says so'],
  [/taking off lets go at/i, 'nobody says so'],
  [/Needed less had/i, 'nobody says so'],
  [/Had lies above one need/i, 'nobody says so'],
  [/goes with the opening three times over/i, 'nobody says so'],
  [/two fifths of the way down from/i, 'nobody says so'],
  [/The leaks do not ask/i, 'nobody says so'],
  [/short by a little, and short is short/i, 'nobody says so'],
  [/near three times as long for less than half more/i, 'nobody says so'],
  [/may as well be a band/i, 'nobody says so'],
  [/come off the top/i, 'nobody says so'],
  [/they lie in turn/i, 'nobody says so'],
];

interface Banned {
  readonly words: string;
  /** What to say, or why not this. */
  readonly instead: string;
}

/** Each banned line in a text of a page, the first of its kind. */
export const bannedIn = (text: string): readonly Banned[] =>
  BANNED.flatMap(([pattern, instead]) => {
    const [found] = pattern.exec(text) ?? [];
    return found === undefined ? [] : [{ words: found, instead }];
  });
