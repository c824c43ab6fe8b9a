import { LEAST, ranked } from '../../cases/bay-list.ts';
import type { PictureProps } from '../../simulation/simulation-view.tsx';
import { BelowTable } from '../../simulation/below/BelowTable.tsx';
import { words } from './below-words.en.ts';
import type { Step, TestOrderModel } from './model.ts';
import { printMinutes, printRate, printWorth } from './print.ts';
import { words as bay } from './words.en.ts';

const { way, left, taken } = words;

function bestThen(took: Step['took'], best: Step['best']): string {
  if (best === undefined) return way.stop;
  if (best.one === took.one) return way.same;
  return way.other({ test: bay.tests[best.one.key], rate: printRate(best) });
}

/** Test by test, beside the one that would have told most for its minutes. */
function Way({ model }: { readonly model: TestOrderModel }) {
  const steps = model.way.value;
  return (
    <BelowTable
      class="test-way"
      head={way.head}
      caption={steps.length === 0 ? way.none : way.caption}
      columns={[way.test, way.minutes, way.worth, way.rate]}
      rows={steps.map(({ took, best }) => ({
        key: took.one.key,
        cells: [
          <>
            {bay.tests[took.one.key]}
            <span class="test-best">{bestThen(took, best)}</span>
          </>,
          printMinutes(took.minutes),
          printWorth(took.worth),
          printRate(took),
        ],
      }))}
    />
  );
}

/** What could be taken next, as the planner has it. */
function Left({ model }: { readonly model: TestOrderModel }) {
  const rows = ranked(model.job.value);
  return (
    <BelowTable
      class="test-left"
      head={left.head}
      caption={model.sure.value ? left.sure : left.caption}
      columns={[left.test, left.minutes, left.worth, left.rate]}
      rows={rows.map((one) => ({
        key: one.one.key,
        cells: [
          bay.tests[one.one.key],
          printMinutes(one.minutes),
          one.worth < LEAST ? left.nothing : printWorth(one.worth),
          one.worth < LEAST ? left.nothing : printRate(one),
        ],
      }))}
    />
  );
}

/** Your way beside the planner's, and what is taken for granted; fetched once the answer is out. */
export function Below({ model }: PictureProps<TestOrderModel>) {
  return (
    <>
      <Way model={model} />
      <Left model={model} />
      <div class="below-taken">
        <p>
          <strong>{taken.head}</strong> {taken.list}
        </p>
        <p>{taken.words}</p>
        <p>{taken.rule}</p>
      </div>
    </>
  );
}
