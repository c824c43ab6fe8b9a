import type { Signal } from '@preact/signals';
import { useEffect, useRef, useState } from 'preact/hooks';
import { parseAmount } from '../quantity/parse-amount.ts';
import { format, formatNumber } from '../quantity/print.ts';
import type { Quantity } from '../quantity/quantity.ts';
import { textFor, type UnitSystem, type UnitText } from '../quantity/unit-system.ts';
import { shownGrid } from './shown-grid.ts';
import { stepValue } from './step-value.ts';
import { Kept } from './still.ts';
import { useUnits } from './use-units.ts';
import { words as text } from './later/words.en.ts';

export interface SliderProps {
  /** Unique on the page; every part's id is made from it. */
  readonly id: string;
  readonly label: UnitText;
  /** The given itself, in the quantity's metric unit. */
  readonly value: Signal<number>;
  readonly quantity: Quantity;
  readonly min: number;
  readonly max: number;
  readonly step: number;
  /** The value in words where words say more than the number: "two hairs". */
  readonly words?: ((value: number, system: UnitSystem) => string) | undefined;
}

/** Letters of a unit for which a label leaves room beside the field. */
const LONG = 6;

/** What has been typed and not yet taken up, with the value that was in force meanwhile. */
interface Draft {
  readonly text: string;
  readonly refused: boolean;
  readonly over: number;
}

/**
 * A number to move: less, slide, more, or type. No drag is ever needed, typed text may carry
 * any unit the trade uses, and text that cannot be taken stays where it is with a sentence
 * under it while the last good value keeps its force.
 */
export function Slider({ id, label: name, value, quantity, min, max, step, words }: SliderProps) {
  const system = useUnits();
  const label = textFor(name, system);
  const range = useRef<HTMLInputElement>(null);
  const field = useRef<HTMLInputElement>(null);
  const [draft, setDraft] = useState<Draft | null>(null);
  const now = value.value;
  const bounds = { min, max, step };
  const { symbol } = quantity[system];
  // The slider moves in the reader's units, so that its stops are round numbers there.
  const grid = shownGrid(bounds, quantity, system);

  const inWords = (v: number): string => words?.(v, system) ?? '';
  const valueWords = (v: number): string => {
    const number = format(v, quantity, system);
    const more = inWords(v);
    return more === '' ? number : `${number}, ${more}`;
  };
  const set = (v: number) => {
    setDraft(null);
    value.value = v;
  };
  const takeUp = (text: string) => {
    const entry = parseAmount(text, quantity, system, bounds);
    if (entry.ok) set(entry.value);
    else setDraft({ text, refused: true, over: value.peek() });
  };

  useEffect(() => {
    // A browser may hand back what stood here before a reload, and a quick hand may have moved
    // the slider before this script ran: the page's state then follows what is shown.
    const typed = field.current?.value ?? '';
    const drawn = range.current?.defaultValue ?? '';
    const moved = Number(range.current?.value);
    // Made by this script, and not by the server: nobody can have been quicker.
    if (drawn === '') return;
    if (typed !== '' && typed !== field.current?.defaultValue) takeUp(typed);
    // A browser rounds a value between two stops (typed, or set by a task) to the nearer one; only a
    // move of more than half a step is a hand's.
    else if (Math.abs(moved - Number(drawn)) > grid.step * 0.75) set(grid.metric(moved));
  }, []);

  // A value changed by anything else (a reset, a task's start) makes what was typed stale.
  const live = draft !== null && draft.over === now ? draft : null;
  const entry = live?.refused ? parseAmount(live.text, quantity, system, bounds) : null;
  const error = entry && !entry.ok ? entry.sentence : '';
  const shownText = live?.text ?? formatNumber(now, quantity, system);

  const nudge = (way: -1 | 1, name: string, shut: boolean, sign: string) => (
    <button
      type="button"
      class="nudge"
      aria-label={name}
      aria-disabled={shut}
      onClick={() => set(grid.metric(stepValue(grid.place(value.peek()), way, grid)))}
    >
      <svg viewBox="0 0 24 24" aria-hidden="true">
        <path d={sign} />
      </svg>
    </button>
  );
  // Both stand still but at the ends.
  const deps = [label, value, quantity, system, min, max, step];
  const less = (
    <Kept
      by={[now <= min, ...deps]}
      draw={() => nudge(-1, text.less(label), now <= min, 'M5 12h14')}
    />
  );
  const more = (
    <Kept
      by={[now >= max, ...deps]}
      draw={() => nudge(1, text.more(label), now >= max, 'M5 12h14M12 5v14')}
    />
  );
  return (
    <div class={symbol.length > LONG ? 'slider slider-long' : 'slider'}>
      <div class="slider-head">
        <label for={id}>{label}</label>{' '}
        {/* No <output>: that is a live region, and the slider already speaks its own value. */}
        <span id={`${id}-words`} class="number-words">
          {/* The field shows the number, but while it holds one that cannot be taken. */}
          {error === '' ? inWords(now) : valueWords(now)}
        </span>
      </div>
      <div class="slider-row">
        {/* In the order in which they stand. */}
        <span class="slider-field">
          <input
            ref={field}
            type="text"
            inputMode="decimal"
            autocomplete="off"
            id={`${id}-field`}
            aria-label={symbol === '' ? text.type(label) : text.typeIn(label, symbol)}
            aria-invalid={error !== ''}
            aria-describedby={`${id}-error`}
            value={shownText}
            onInput={(event) =>
              setDraft({
                text: event.currentTarget.value,
                refused: live?.refused ?? false,
                over: now,
              })
            }
            onChange={(event) => takeUp(event.currentTarget.value)}
          />
          <span class="unit" aria-hidden="true">
            {symbol}
          </span>
        </span>
        {less}
        <input
          ref={range}
          id={id}
          type="range"
          min={grid.min}
          max={grid.max}
          step={grid.step}
          value={grid.place(now)}
          aria-valuetext={valueWords(now)}
          onInput={(event) => set(grid.metric(Number(event.currentTarget.value)))}
        />
        {more}
      </div>
      <p id={`${id}-error`} class="field-error" aria-live="polite">
        {error === '' ? null : error}
      </p>
    </div>
  );
}
