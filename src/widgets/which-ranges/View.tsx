import { useMemo } from 'preact/hooks';
import { SimShell } from '../shell/SimShell.tsx';
import { makeWhichRanges } from './model.ts';
import { PathMap } from './PathMap.tsx';
import { sim } from './sim.ts';
import { Bench, Gauges, Legend, Torques } from './Tables.tsx';

export function WhichRanges() {
  const model = useMemo(makeWhichRanges, []);
  return (
    <SimShell
      sim={sim}
      model={model}
      picture={({ revealed }) => <Gauges model={model} revealed={revealed} />}
      below={() => (
        <>
          <PathMap model={model} />
          <div class="ranges-tables">
            <Torques model={model} />
            <Bench model={model} />
            <Legend />
          </div>
        </>
      )}
    />
  );
}
