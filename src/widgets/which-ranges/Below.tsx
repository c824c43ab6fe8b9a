import type { PictureProps } from '../../simulation/simulation-view.tsx';
import type { RangesModel } from './model.ts';
import { PathMap } from './PathMap.tsx';
import { Legend, Torques } from './Tables.tsx';

/** Shown once the answer is out, and fetched then. */
export function Below({ model }: PictureProps<RangesModel>) {
  return (
    <>
      <PathMap model={model} />
      <div class="ranges-tables">
        <Torques model={model} />
        <Legend />
      </div>
    </>
  );
}
