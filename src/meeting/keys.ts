/** What a key does on the stage. A clicker sends Page Up, Page Down, and B or a full stop. */
export type Command =
  | { readonly do: 'next' | 'back' | 'first' | 'last' | 'blank' | 'leave' }
  | { readonly do: 'pause' | 'restart' | 'clock' | 'full' | 'code' | 'notes' | 'keys' }
  | { readonly do: 'hand'; readonly option: number; readonly by: 1 | -1 };

export interface Pressed {
  readonly key: string;
  readonly code: string;
  readonly shiftKey: boolean;
  readonly ctrlKey: boolean;
  readonly altKey: boolean;
  readonly metaKey: boolean;
}
/** Where the key was pressed: in a field that takes text, on a control that arrows move, on a button, or nowhere in particular. */
export type Where = 'text' | 'control' | 'button' | 'stage';

const moves: Readonly<Record<string, Command['do'] & ('next' | 'back' | 'first' | 'last')>> = {
  ArrowRight: 'next',
  ArrowDown: 'next',
  ArrowLeft: 'back',
  ArrowUp: 'back',
  Home: 'first',
  End: 'last',
};
const letters: Readonly<Record<string, Exclude<Command['do'], 'hand'>>> = {
  b: 'blank',
  '.': 'blank',
  p: 'pause',
  r: 'restart',
  t: 'clock',
  f: 'full',
  q: 'code',
  n: 'notes',
  '?': 'keys',
};

/** @returns undefined if the key is not the stage's: then it does what it does everywhere */
export function commandOf(pressed: Pressed, where: Where): Command | undefined {
  const { key, code, shiftKey } = pressed;
  if (pressed.ctrlKey || pressed.altKey || pressed.metaKey) return undefined;
  if (key === 'Escape') return { do: 'leave' };
  // A clicker goes on wherever somebody clicked or typed last; a field of one line has no pages to turn.
  if (key === 'PageDown') return { do: 'next' };
  if (key === 'PageUp') return { do: 'back' };
  if (where === 'text' || where === 'control') return undefined;
  const move = moves[key];
  if (move !== undefined) return { do: move };
  if (key === ' ') return where === 'button' ? undefined : { do: shiftKey ? 'back' : 'next' };
  // With shift held the key of a figure gives another sign on every layout; its place does not.
  const [, figure] = /^(?:Digit|Numpad)([1-5])$/.exec(code) ?? [];
  if (figure !== undefined)
    return { do: 'hand', option: Number(figure) - 1, by: shiftKey ? -1 : 1 };
  const letter = letters[key.toLowerCase()];
  return letter === undefined ? undefined : { do: letter };
}
