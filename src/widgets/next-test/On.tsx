import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import { NoList as NoListOn } from '../../own-sheet/NoList.tsx';
import { OnTransmission } from '../../own-sheet/OnTransmission.tsx';
import { table } from '../../planner/load.ts';
import type { NextTestModel } from './model.ts';
import { keepOn, keptOn } from './on-place.ts';

/** The transmission that the readings were taken on. */
export function On({ model }: { readonly model: NextTestModel }) {
  const which = useSignal(keptOn());
  useEffect(() => which.subscribe(keepOn), []);
  return (
    <OnTransmission
      model={model}
      which={which}
      choose={(next) => (which.value = next)}
      training={table}
    />
  );
}

/** Why there is no list of causes on it. */
export const NoList = ({ model }: { readonly model: NextTestModel }) => (
  <NoListOn model={model} which={keptOn()} />
);
