/**
 * A simulation's state in a link: `?clutch=1~temp.100~crack.0.25`.
 *
 * One search parameter per simulation, named after it, so that several share a page.
 * Its value is a version, then `key.value` pairs, all in characters that survive every
 * mail program and messenger without escaping. Every control is written out, not only
 * those away from their default: a link must mean the same after a default changes.
 *
 * Reading never throws and always lands in range; whatever had to be changed is told in
 * a sentence. Reading what was printed gives back the same values.
 */

import { words } from './later/words.en.ts';

export interface NumberControl {
  readonly kind: 'number';
  readonly key: string;
  readonly label: string;
  readonly min: number;
  readonly max: number;
  readonly step: number;
  readonly default: number;
  /** How a value of this control is said in a note, as in "40 °C". */
  readonly say?: (value: number) => string;
}
export interface ChoiceControl {
  readonly kind: 'choice';
  readonly key: string;
  readonly label: string;
  readonly options: readonly string[];
  readonly default: string;
}
export interface FlagControl {
  readonly kind: 'flag';
  readonly key: string;
  readonly label: string;
  readonly default: boolean;
}
export type LinkControl = NumberControl | ChoiceControl | FlagControl;
export type LinkValue = number | string | boolean;
export type LinkValues = Readonly<Record<string, LinkValue>>;

export interface LinkSchema {
  /** The search parameter's name: the simulation's id on its page. */
  readonly id: string;
  /** Raise it when a key changes its meaning; older links then give the defaults and say so. */
  readonly version: number;
  readonly controls: readonly LinkControl[];
}

export interface ParsedLink {
  /** Whether the link spoke about this simulation at all. */
  readonly present: boolean;
  readonly values: LinkValues;
  /** Whole sentences for the reader; empty when the link was taken as it stood. */
  readonly notes: readonly string[];
}

export const LONGEST_LINK = 2000;
const NUMBER = /^-?(\d+\.?\d*|\.\d+)(e-?\d{1,3})?$/iu;

export function defaultValues({ controls }: LinkSchema): LinkValues {
  return Object.fromEntries(controls.map((control) => [control.key, control.default]));
}

/** Values that lie in range whatever was handed in; a wrong type gives the default. */
function inRange(control: LinkControl, value: unknown): LinkValue {
  switch (control.kind) {
    case 'number':
      if (typeof value !== 'number' || Number.isNaN(value)) return control.default;
      // Adding zero turns -0 into 0, which prints and reads back as itself.
      return Math.min(control.max, Math.max(control.min, value)) + 0;
    case 'choice':
      return typeof value === 'string' && control.options.includes(value) ? value : control.default;
    case 'flag':
      return typeof value === 'boolean' ? value : control.default;
  }
}

/** The part after `id=`, as in `1~temp.100~crack.0.25`. */
export function printState(schema: LinkSchema, values: LinkValues): string {
  const pairs = schema.controls.map((control) => {
    const value = inRange(control, values[control.key]);
    // "1e+21" would need escaping; "1e21" reads the same.
    const text =
      typeof value === 'boolean' ? (value ? 'yes' : 'no') : String(value).replace('+', '');
    return `${control.key}.${text}`;
  });
  return [String(schema.version), ...pairs].join('~');
}

/**
 * A search string, `?` included, that holds this state. Other parameters of `search` are
 * kept while all fits into 2,000 characters; if not, only this simulation is written.
 */
export function printLink(schema: LinkSchema, values: LinkValues, search = ''): string {
  const own = `${schema.id}=${printState(schema, values)}`;
  const others = search
    .replace(/^\?/u, '')
    .split('&')
    .filter((part) => part !== '' && part.split('=')[0] !== schema.id);
  const all = `?${[...others, own].join('&')}`;
  return all.length <= LONGEST_LINK ? all : `?${own}`;
}

function readNumber(control: NumberControl, text: string, notes: string[]): number | undefined {
  const say = control.say ?? String;
  const value = NUMBER.test(text) ? Number(text) : Number.NaN;
  if (Number.isNaN(value)) {
    notes.push(
      words.link.noNumber(control.label, say(control.default), say(control.min), say(control.max)),
    );
    return undefined;
  }
  const kept = inRange(control, value) as number;
  if (kept !== value) {
    notes.push(
      words.link.outside(
        control.label,
        Number.isFinite(value) ? say(value) : words.link.tooLarge,
        say(kept),
        say(control.min),
        say(control.max),
      ),
    );
  }
  return kept;
}

function readOne(control: LinkControl, text: string, notes: string[]): LinkValue | undefined {
  if (control.kind === 'number') return readNumber(control, text, notes);
  const allowed = control.kind === 'choice' ? control.options : ['yes', 'no'];
  if (!allowed.includes(text)) {
    notes.push(words.link.noChoice(control.label));
    return undefined;
  }
  return control.kind === 'flag' ? text === 'yes' : text;
}

/**
 * The values that a state sets, the part after `id=`, each in range; what it leaves out or sets to nothing that can be taken is not
 * among them. `notes` takes a sentence for whatever was changed.
 */
export function readState(schema: LinkSchema, state: string, notes: string[] = []): LinkValues {
  const [version, ...pairs] = state.split('~');
  if (version !== String(schema.version)) {
    notes.push(words.link.otherVersion);
    return {};
  }
  const values: Record<string, LinkValue> = {};
  const seen = new Set<string>();
  let unknown = false;
  for (const pair of pairs) {
    const dot = pair.indexOf('.');
    const key = dot === -1 ? pair : pair.slice(0, dot);
    const control = schema.controls.find((candidate) => candidate.key === key);
    if (!control || seen.has(key)) {
      unknown = true;
      continue;
    }
    seen.add(key);
    const value = readOne(control, dot === -1 ? '' : pair.slice(dot + 1), notes);
    if (value !== undefined) values[key] = value;
  }
  if (unknown) notes.push(words.link.partLeftOut);
  return values;
}

/** Reads this simulation's state out of a page's search string (`location.search`). */
export function parseLink(schema: LinkSchema, search: string): ParsedLink {
  const defaults = defaultValues(schema);
  if (search.length > LONGEST_LINK) {
    // Cut off in the middle it could mean anything, so none of it is taken.
    const present = `&${search.replace(/^\?/u, '')}`.includes(`&${schema.id}=`);
    const notes = present ? [words.link.tooLong(String(LONGEST_LINK))] : [];
    return { present, values: defaults, notes };
  }
  const text = new URLSearchParams(search).get(schema.id);
  if (text === null) return { present: false, values: defaults, notes: [] };
  const notes: string[] = [];
  const values = { ...defaults, ...readState(schema, text, notes) };
  return { present: true, values, notes };
}
