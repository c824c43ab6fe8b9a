import { Books } from './Books.tsx';
import { Pack, Piston } from './Drawings.tsx';
import type { HoldingModel } from './model.ts';

/** Shown once the answer is out, and fetched then. */
export function Below({ model }: { readonly model: HoldingModel }) {
  return (
    <>
      <Piston model={model} />
      <Pack model={model} />
      <Books model={model} />
    </>
  );
}
