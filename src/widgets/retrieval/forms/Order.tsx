import { useLayoutEffect, useRef, useState } from 'preact/hooks';
import type { AskedOrder } from '../../../quiz/asked.ts';
import type { FormProps } from '../form-props.ts';
import { WordsText } from '../WordsText.tsx';
import { moved } from './moved.ts';
import { words } from './words.en.ts';

/** Steps to put in order: by two buttons on each, or by dragging its number. */
export function Order({ model, asked, id }: FormProps<AskedOrder>) {
  const { steps } = asked;
  const given = model.ticked.value;
  const order = given.length === 0 ? steps.map((step) => step.id) : given;
  const list = useRef<HTMLOListElement>(null);
  const pressed = useRef<HTMLButtonElement | undefined>(undefined);
  const dragged = useRef<string | undefined>(undefined);
  const [told, setTold] = useState<string | undefined>(undefined);

  // A row that moves takes its button along, and some browsers drop the focus on the way.
  useLayoutEffect(() => {
    pressed.current?.focus();
    pressed.current = undefined;
  }, [given]);

  function move(step: string, to: number): void {
    if (to < 0 || to >= order.length || order[to] === step) return;
    model.give(moved(order, step, to));
    setTold(step);
  }

  function drag(event: PointerEvent): void {
    const step = dragged.current;
    const rows = Array.from(list.current?.children ?? []);
    if (step === undefined || rows.length === 0) return;
    const from = order.indexOf(step);
    const over = rows.findIndex((row, place) => {
      const { top, bottom, height } = row.getBoundingClientRect();
      // Past the middle of a neighbour, so that rows of unlike height do not jump to and fro.
      return place < from
        ? event.clientY < top + height / 2
        : place > from && event.clientY > bottom - height / 2 && event.clientY < bottom;
    });
    if (over >= 0) move(step, over);
  }

  return (
    <fieldset class="choice form-order" aria-describedby={`${id}-fault-answer`}>
      <legend>{words.order}</legend>
      <ol
        ref={list}
        onPointerMove={drag}
        onPointerUp={() => (dragged.current = undefined)}
        onPointerCancel={() => (dragged.current = undefined)}
      >
        {order.map((step, place) => (
          <li key={step}>
            <span
              class="form-place"
              onPointerDown={(event) => {
                dragged.current = step;
                list.current?.setPointerCapture(event.pointerId);
              }}
            >
              {place + 1}
            </span>
            <span id={`${id}-step-${step}`}>
              <WordsText words={steps.find((one) => one.id === step)?.words ?? []} />
            </span>
            {(['up', 'down'] as const).map((way) => {
              const to = way === 'up' ? place - 1 : place + 1;
              return (
                <button
                  key={way}
                  type="button"
                  class="nudge"
                  id={`${id}-${way}-${step}`}
                  aria-label={words[way]}
                  aria-labelledby={`${id}-${way}-${step} ${id}-step-${step}`}
                  aria-disabled={to < 0 || to >= order.length}
                  onClick={(event) => {
                    pressed.current = event.currentTarget;
                    move(step, to);
                  }}
                >
                  <svg viewBox="0 0 24 24" aria-hidden="true">
                    <path d={way === 'up' ? 'M5 15l7-7 7 7' : 'M5 9l7 7 7-7'} />
                  </svg>
                </button>
              );
            })}
          </li>
        ))}
      </ol>
      <p class="for-ears" role="status">
        {told !== undefined && (
          <>
            {words.nowAt(String(order.indexOf(told) + 1), String(order.length))}{' '}
            <WordsText words={steps.find((one) => one.id === told)?.words ?? []} />
          </>
        )}
      </p>
    </fieldset>
  );
}
