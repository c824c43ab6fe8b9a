import type { PictureProps } from '../../simulation/simulation-view.tsx';
import type { RangesModel } from './model.ts';
import { PathMap } from './PathMap.tsx';
import { Bench, Legend, Torques } from './Tables.tsx';

/** Shown once the answer is out, and fetched then. */
export function Below({ model }: PictureProps<RangesModel>) {
  return (
    <>
      <PathMap model={model} />
      <div class="ranges-tables">
        <Torques model={model} />
        <Bench model={model} />
        <Legend />
      </div>
    </>
  );
}
