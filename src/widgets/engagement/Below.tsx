import type { Signal } from '@preact/signals';
import type { EngagementModel } from './model.ts';
import { Player } from './Player.tsx';
import { PressureTraces } from './Traces.tsx';

/** Shown once the answer is out, and fetched then. */
export function Below({
  model,
  cursor,
}: {
  readonly model: EngagementModel;
  readonly cursor: Signal<number | null>;
}) {
  return (
    <>
      <Player model={model} cursor={cursor} />
      <PressureTraces model={model} cursor={cursor} />
    </>
  );
}
