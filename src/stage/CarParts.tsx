import type { ComponentChildren } from 'preact';
import { useRef, useState } from 'preact/hooks';
import { words } from './words.en.ts';

const PARTS = ['talk', 'looks', 'measure', 'conclude'] as const;
type Part = (typeof PARTS)[number];

/** A car on the wall shows one of its parts at a time, so that the room sees all of it in large letters. */
export function CarParts({ children }: { readonly children: ComponentChildren }) {
  const [part, setPart] = useState<Part>('talk');
  const box = useRef<HTMLDivElement>(null);
  const show = (next: Part): void => {
    setPart(next);
    // Looks lie in a fold of their own on the page of cases.
    box.current?.querySelector('details.case-looks')?.setAttribute('open', '');
  };
  const onLink = (event: MouseEvent): void => {
    const link = event.target instanceof Element ? event.target.closest('a') : null;
    // Whoever looks something up has not left the meeting.
    if (link) link.target = '_blank';
  };
  return (
    <div class={`stage-car part-${part}`} data-own-keys ref={box} onClickCapture={onLink}>
      <div class="stage-parts" role="group" aria-label={words.car.parts}>
        {PARTS.map((one) => (
          <button
            key={one}
            type="button"
            class="stage-button"
            aria-pressed={part === one}
            onClick={() => show(one)}
          >
            {words.car.part[one]}
          </button>
        ))}
      </div>
      {children}
    </div>
  );
}
