import type { Signal } from '@preact/signals';
import type { SeesModel } from './model.ts';
import { Score, StateDiagram } from './Pictures.tsx';

/** Shown once the answer is out, and fetched then. */
export function Below({
  model,
  cursor,
}: {
  readonly model: SeesModel;
  readonly cursor: Signal<number | null>;
}) {
  return (
    <>
      <Score model={model} />
      <StateDiagram model={model} cursor={cursor} />
    </>
  );
}
