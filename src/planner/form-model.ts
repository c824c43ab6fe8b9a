import { computed, signal } from '@preact/signals';
import {
  columnOf,
  isNumeric,
  offScale,
  ratherInOther,
  testOf,
  TESTS,
  WARMTHS,
  type Grounds,
  type NumericTest,
  type TakenReading,
  type Test,
} from '../diagnosis/index.ts';
import { parseAmount } from '../quantity/parse-amount.ts';
import { format } from '../quantity/print.ts';
import { temperature } from '../quantity/quantities.ts';
import type { Quantity } from '../quantity/quantity.ts';
import { rangeWords } from '../quantity/refusals.ts';
import { rangeTyped } from '../quantity/typed-range.ts';
import { otherSystem, type UnitSystem } from '../quantity/unit-system.ts';
import { measuredAs } from './amounts.ts';
import { words } from './words.en.ts';

/** What stands in the form, as it was typed. */
export interface FormDraft {
  readonly test: string;
  readonly text: string;
  readonly temperature: string;
  readonly never: boolean;
  readonly codes: readonly string[];
  readonly outcome: string;
}
export const EMPTY: FormDraft = {
  test: 'codes',
  text: '',
  temperature: '',
  never: false,
  codes: [],
  outcome: '',
};

/** What stands for "none of the codes that count" in the place of an outcome: that somebody looked. */
export const NO_CODES = 'none';

type Field = 'text' | 'temperature' | 'outcome';
/** A sentence at a field; with `offers`, what may have been meant, to be pressed. */
export interface Trouble {
  readonly field: Field;
  readonly sentence: string;
  readonly offers?: readonly string[];
  /** Said while something else was done: the keys stay where they are. */
  readonly aside?: boolean;
}
interface Refused {
  readonly ok: false;
  readonly trouble: Trouble;
}
export type Read = { readonly ok: true; readonly reading: TakenReading } | Refused;

/** The number in either unit, where none was typed and the two differ; null otherwise. */
function inOther(text: string, quantity: Quantity, system: UnitSystem) {
  const other = otherSystem(system);
  const [own, others] = [parseAmount(text, quantity, system), parseAmount(text, quantity, other)];
  if (!own.ok || !others.ok || own.value === others.value) return null;
  return {
    value: others.value,
    units: [
      `${text.trim()} ${quantity[other].symbol}`,
      `${text.trim()} ${quantity[system].symbol}`,
    ],
    unit: quantity[other].symbol,
    means: format(others.value, quantity, system),
  };
}

const wrong = (field: Field, sentence: string, offers?: readonly string[]): Refused => ({
  ok: false,
  trouble: { field, sentence, ...(offers && { offers }) },
});

/** A letter O among digits, or at the end of them: no unit. */
const LETTER_O = /\do+(?!\p{L})|(?<!\p{L})o+[\d.,]/iu;
function unread(
  field: Field,
  text: string,
  sentence: string,
  range: ReturnType<typeof rangeTyped>,
): Refused {
  const typed = text.trim();
  if (LETTER_O.test(typed)) return wrong(field, words.form.letterO({ typed }));
  const middle = range?.middle;
  return middle === undefined
    ? wrong(field, range?.sentence ?? sentence)
    : wrong(field, words.form.range({ typed, middle }), [middle]);
}

function readTemperature(draft: FormDraft, system: UnitSystem): number | undefined | Refused {
  const { warmth } = testOf(draft.test).at;
  if (warmth === undefined || draft.temperature.trim() === '') return undefined;
  const { from, to } = WARMTHS[warmth];
  const range = { min: from, max: to };
  const asked = [draft.temperature, temperature, system, range] as const;
  const read = parseAmount(...asked);
  if (read.ok) return read.value;
  const other = inOther(draft.temperature, temperature, system);
  if (other !== null && other.value >= from && other.value <= to) {
    const { unit, means } = other;
    return wrong('temperature', words.form.askUnit({ unit, means }), other.units.slice(0, 1));
  }
  const number = parseAmount(draft.temperature, temperature, system);
  if (!number.ok)
    return unread('temperature', draft.temperature, read.sentence, rangeTyped(...asked));
  return wrong(
    'temperature',
    words.form.band({
      given: format(number.value, temperature, system),
      warm: words.warmths[warmth],
      range: rangeWords(range, temperature, system),
    }),
  );
}

/** What a test reads on a healthy car of the transmission that is chosen; until that is known, on the middle of all cars. */
function exampleOf(test: NumericTest, grounds: Grounds | null): number {
  const [from, to] = test.span;
  return grounds?.usual[columnOf(test.id)] ?? offScale(test, (from + to) / 2);
}

/** A reading of what was typed, or a sentence at the field that it is about. */
export function readDraft(
  draft: FormDraft,
  system: UnitSystem,
  /** To ask about units by; null while the planner is on its way. */
  grounds: Grounds | null,
): Read {
  const test = testOf(draft.test);
  if (!isNumeric(test)) {
    const { codes, outcome } = draft;
    if (test.kind === 'codes') {
      if (codes.length === 0 && outcome !== NO_CODES) return wrong('outcome', words.form.noCode);
      return { ok: true, reading: { test, value: codes } };
    }
    if (outcome === '') return wrong('outcome', words.form.notSeen);
    return { ok: true, reading: { test, value: outcome } };
  }
  let value: number | null = null;
  if (!draft.never) {
    const { quantity, min, max } = measuredAs[test.kind];
    const example = exampleOf(test, grounds);
    const asked = [draft.text, quantity, system, { min, max, example }] as const;
    const read = parseAmount(...asked);
    const other = inOther(draft.text, quantity, system);
    if (
      other !== null &&
      grounds !== null &&
      other.value >= min &&
      other.value <= max &&
      ratherInOther(grounds, test, read.ok ? read.value : undefined, other.value)
    ) {
      const { unit, means } = other;
      // The unit of the page can be insisted on where the number is possible in it at all.
      return wrong(
        'text',
        words.form.askUnit({ unit, means }),
        read.ok ? other.units : other.units.slice(0, 1),
      );
    }
    if (!read.ok) return unread('text', draft.text, read.sentence, rangeTyped(...asked));
    value = read.value;
  }
  const temperatureC = readTemperature(draft, system);
  if (typeof temperatureC === 'object') return temperatureC;
  return {
    ok: true,
    reading: { test, value, ...(temperatureC !== undefined && { temperatureC }) },
  };
}

const quantityOf = (test: Test) => (isNumeric(test) ? measuredAs[test.kind].quantity : test.kind);

/** The form for one reading. */
export function makeForm() {
  const draft = signal<FormDraft>(EMPTY);
  const trouble = signal<Trouble | null>(null);
  const answering = signal(0);
  return {
    draft,
    trouble,
    test: computed(() => testOf(draft.value.test)),
    set: (change: Partial<FormDraft>) => {
      draft.value = { ...draft.value, ...change };
      trouble.value = null;
    },
    /** Another test was meant: what was read stays, where the two read alike. */
    choose: (id: string, system: UnitSystem) => {
      const before = draft.value;
      const [was, is] = [testOf(before.test), testOf(id)];
      const alike = quantityOf(was) === quantityOf(is);
      draft.value = alike ? { ...before, test: id } : { ...EMPTY, test: id };
      const warm = readTemperature(draft.value, system);
      trouble.value = typeof warm === 'object' ? { ...warm.trouble, aside: true } : null;
    },
    /** A test that was taken: to what it read, and nothing of another one counts for it. */
    begin: (test: string) => {
      draft.value = { ...EMPTY, test };
      trouble.value = null;
      answering.value += 1;
    },
    /** How often the place of the answer was asked for. */
    answering,
    /** The test stays: the next reading is often its neighbor. */
    empty: () => {
      draft.value = { ...EMPTY, test: draft.value.test };
      trouble.value = null;
    },
  };
}
export type FormModel = ReturnType<typeof makeForm>;

/** A draft from elsewhere; what cannot be one is left out. */
export function draftFrom(given: Partial<FormDraft>): FormDraft {
  const known = TESTS.some(({ id }) => id === given.test);
  return known ? { ...EMPTY, ...given } : EMPTY;
}
