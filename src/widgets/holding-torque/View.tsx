import { useMemo } from 'preact/hooks';
import { SimShell } from '../shell/SimShell.tsx';
import { Books } from './Books.tsx';
import { Pack, Piston } from './Drawings.tsx';
import { makeHoldingTorque } from './model.ts';
import { sim } from './sim.ts';
import { TorqueChart } from './TorqueChart.tsx';

export function HoldingTorque() {
  const model = useMemo(makeHoldingTorque, []);
  return (
    <SimShell
      sim={sim}
      model={model}
      picture={({ revealed }) => <TorqueChart model={model} revealed={revealed} />}
      below={() => (
        <>
          <Piston model={model} />
          <Pack model={model} />
          <Books model={model} />
        </>
      )}
    />
  );
}
