import type { Signal } from '@preact/signals';
import { Grip, type GripProps } from '../charts/Grip.tsx';
import type { LineChartProps } from '../charts/line-data.ts';
import type { ControlSpec, Givens, PictureContext } from './sim-spec.ts';

/**
 * A control of a simulation that is also dragged in its picture, for `over` of a line chart; nothing
 * while it may not be moved.
 */
export function gripOf<G extends Givens>(
  { live }: Pick<PictureContext, 'live'>,
  { controls }: { readonly controls: readonly ControlSpec<G>[] },
  key: keyof G & string,
  value: Signal<number>,
  along: GripProps['along'] = 'x',
): Pick<LineChartProps, 'over'> {
  const control = controls.find((one) => one.key === key);
  if (control?.kind !== 'number' || !live(key)) return {};
  const { min, max, step } = control;
  return { over: (plot) => <Grip {...{ along, value, min, max, step, plot }} /> };
}
