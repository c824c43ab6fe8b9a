import type { Signal } from '@preact/signals';
import { bisectCenter } from 'd3-array';
import type { Frame } from './Axes.tsx';
import { moveIndex } from './move-index.ts';
import { words as text } from './words.en.ts';

interface CursorPadProps {
  readonly label: string;
  /** The stops of the cursor, metric and rising. */
  readonly x: readonly number[];
  readonly cursor: Signal<number | null>;
  /** Moved by dragging alone, and left where it is by whoever goes away. */
  readonly stays?: boolean;
  /** Where the controls stand, if that shows in the chart: a cursor that nobody has moved reads there. */
  readonly now: number | undefined;
  readonly frame: Frame;
  /** From a stop to its place, to turn a pointer's place back into a stop. */
  readonly place: (metric: number) => number;
  /** The sentence for a stop, "At 80 °C: healthy 620 kPa, cracked 340 kPa." */
  readonly words: (index: number) => string;
}

/**
 * Lies over a chart and moves its cursor, by keys, mouse or finger. It is a slider to assistive
 * technology: arrow keys reach it in every mode and its value text is spoken at every step
 * without a live region.
 */
export function CursorPad({
  label,
  x,
  cursor,
  stays = false,
  now,
  frame,
  place,
  words,
}: CursorPadProps) {
  const at = cursor.value ?? now;
  const index = at === undefined ? 0 : bisectCenter(x, at);
  const go = (i: number) => (cursor.value = x[i] ?? null);
  const follow = (event: PointerEvent & { currentTarget: HTMLElement }) => {
    const box = event.currentTarget.getBoundingClientRect();
    const px = event.clientX - box.left;
    if (px < frame.left - 12 || px > frame.right + 12) return;
    const places = x.map(place);
    go(bisectCenter(places, px));
  };
  return (
    <div
      class="chart-pad"
      role="slider"
      tabIndex={0}
      aria-label={label}
      aria-valuemin={x[0] ?? 0}
      aria-valuemax={x.at(-1) ?? 0}
      aria-valuenow={x[index] ?? 0}
      aria-valuetext={at === undefined ? text.noPoint : words(index)}
      onKeyDown={(event) => {
        if (event.key === 'Escape' && !stays) {
          cursor.value = null;
          return;
        }
        const next = moveIndex(event.key, at === undefined ? null : index, x.length);
        if (next === null) return;
        event.preventDefault();
        go(next);
      }}
      onPointerMove={(event) => {
        // A mouse points; a finger or a pen drags. Up and down a finger scrolls the page.
        const points = event.pointerType === 'mouse' && !stays;
        if (points || event.buttons > 0) follow(event);
      }}
      onPointerDown={(event) => {
        if (event.pointerType !== 'mouse' || stays)
          event.currentTarget.setPointerCapture(event.pointerId);
        follow(event);
      }}
      onPointerLeave={(event) => {
        const focused = event.currentTarget === document.activeElement;
        if (event.pointerType === 'mouse' && !focused && !stays) cursor.value = null;
      }}
      onBlur={() => {
        if (!stays) cursor.value = null;
      }}
    />
  );
}
