import { airAfter, driveAfter, type Step } from '../../car/back-together.ts';
import { dimension } from '../../quantity/part-quantities.ts';
import { printer } from '../../quantity/print.ts';
import { percent, pressure } from '../../quantity/quantities.ts';
import { BelowTable } from '../../simulation/below/BelowTable.tsx';
import type { PictureProps } from '../../simulation/simulation-view.tsx';
import { useUnits } from '../../ui/use-units.ts';
import { words } from './below-words.en.ts';
import type { JobCardModel } from './model.ts';
import { words as card } from './words.en.ts';

/** Those that change a reading. */
const TOLD = ['lip', 'rings', 'balls', 'bridge', 'level'] as const satisfies readonly Step[];

function Lines() {
  const system = useUnits();
  const print = printer(system);
  const { lines } = words;
  const rows: readonly (Step | null)[] = [null, ...TOLD];
  return (
    <BelowTable
      class="job-lines"
      head={lines.head}
      caption={lines.caption}
      columns={[lines.line, lines.air, lines.forward, lines.reverse, lines.stick]}
      rows={rows.map((step) => {
        const skipped = step === null ? [] : [step];
        const read = driveAfter(skipped);
        const pair = (tap: 'forward' | 'reverse') =>
          lines.pair({
            cold: print(read.cold[tap].kPa, pressure),
            hot: print(read.hot[tap].kPa, pressure),
          });
        return {
          key: step ?? 'none',
          cells: [
            step === null ? lines.right : card.steps[step],
            print(airAfter(skipped), percent),
            pair('forward'),
            pair('reverse'),
            read.stickMm > 0 ? lines.over({ mm: print(read.stickMm, dimension) }) : lines.middle,
          ],
        };
      })}
    />
  );
}

/** Every line by itself, once the tasks that ask for them are over, and what is taken for granted. */
export function Below({ stage }: PictureProps<JobCardModel>) {
  const { taken } = words;
  return (
    <>
      {stage === 'own' && <Lines />}
      <div class="below-taken">
        <p>
          <strong>{taken.head}</strong> {taken.worst}
        </p>
        <p>{taken.air}</p>
        <p>{taken.pulls}</p>
        <p>{taken.left}</p>
      </div>
    </>
  );
}
