import type { Signal } from '@preact/signals';
import { useRef } from 'preact/hooks';
import type { PlacedPlot } from './line-data.ts';
import { round } from './path.ts';

/** A given that shows in a picture and is dragged there: along x as a temperature, along y as a limit. */
export interface GripProps {
  readonly along: 'x' | 'y';
  readonly value: Signal<number>;
  readonly min: number;
  readonly max: number;
  readonly step: number;
  readonly plot: PlacedPlot;
}

/** The stop whose place is nearest to one on the picture. */
export function stopAt(
  { min, max, step }: Pick<GripProps, 'min' | 'max' | 'step'>,
  place: (metric: number) => number,
  pixel: number,
): number {
  const stops = Array.from({ length: Math.round((max - min) / step) + 1 }, (_, i) =>
    Number((min + i * step).toFixed(9)),
  );
  const off = (stop: number) => Math.abs(place(stop) - pixel);
  return stops.reduce((best, stop) => (off(stop) < off(best) ? stop : best), min);
}

/**
 * Lies over a line chart and drags a given along its axis. The slider of the same given is its twin
 * for keys and for the ear, so this is neither focused nor spoken.
 */
export function Grip(props: GripProps) {
  const { along, value, plot } = props;
  const { place } = plot[along];
  const here = place(value.value);
  const x = along === 'x' ? here : plot.frame.right;
  const y = along === 'x' ? plot.foot : here;
  /** From the pointer to the middle of the grip, so that taking hold moves nothing. */
  const off = useRef(0);
  const pixel = (event: PointerEvent & { currentTarget: HTMLElement }): number => {
    const box = event.currentTarget.parentElement?.getBoundingClientRect() ?? new DOMRect();
    return along === 'x' ? event.clientX - box.left : event.clientY - box.top;
  };
  return (
    <div
      class={`chart-grip along-${along}`}
      aria-hidden="true"
      style={{ '--x': `${round(x)}px`, '--y': `${round(y)}px` }}
      onPointerDown={(event) => {
        event.currentTarget.setPointerCapture(event.pointerId);
        off.current = pixel(event) - here;
      }}
      onPointerMove={(event) => {
        if (!event.currentTarget.hasPointerCapture(event.pointerId)) return;
        value.value = stopAt(props, place, pixel(event) - off.current);
      }}
    />
  );
}
