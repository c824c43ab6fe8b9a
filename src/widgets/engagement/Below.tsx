import type { EngagementModel } from './model.ts';
import { PressureTraces } from './Traces.tsx';

/** Shown once the answer is out, and fetched then. */
export function Below({ model }: { readonly model: EngagementModel }) {
  return <PressureTraces model={model} />;
}
