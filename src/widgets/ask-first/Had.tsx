import { ASKED } from '../../cases/answers.ts';
import { minutesUntil } from '../../cases/days.ts';
import { NAMES } from '../../diagnosis/hypotheses.ts';
import { listOf } from '../../quantity/lists.ts';
import { printer } from '../../quantity/print.ts';
import { minutes, temperature } from '../../quantity/quantities.ts';
import { BelowTable } from '../../simulation/below/BelowTable.tsx';
import { useUnits } from '../../ui/use-units.ts';
import { words } from './below-words.en.ts';
import { isLevel } from './front.ts';
import { shareAfter, type AskFirstModel } from './model.ts';
import { answerWords, nameOf } from './print.ts';
import { hasWords } from './verdict.ts';
import { words as asked } from './words.en.ts';

const { had } = words;

/** What the car had, what its customer says to every question, and where talk ends; once a fault was named or given up. */
export function Had({ model }: { readonly model: AskFirstModel }) {
  const print = printer(useUnits());
  const { fault, day } = model.has.value;
  const { fromC } = model.car.value;
  const until = fromC === null ? null : minutesUntil(fromC, day);
  const all = shareAfter(model.answers.value);
  const own = all[NAMES.indexOf(fault)] ?? 0;
  const others = NAMES.filter((name, i) => name !== fault && isLevel(all[i] ?? 0, own));
  const road = asked.answers.road[day];
  const heat =
    fromC === null
      ? had.anyHeat
      : until === null
        ? had.notThatDay({ from: print(fromC, temperature), road })
        : had.heat({ from: print(fromC, temperature), road, minutes: print(until, minutes) });
  return (
    <BelowTable
      class="ask-shares"
      head={had.head({ it: hasWords(model) })}
      caption={heat}
      columns={[had.question, had.says, had.asked]}
      rows={ASKED.map((question) => ({
        key: question,
        cells: [
          asked.questions[question],
          answerWords(question, model.answers.value[question]),
          model.givens[question].value ? had.yes : had.no,
        ],
      }))}
    >
      <p>{others.length === 0 ? had.alone : had.level({ others: listOf(others.map(nameOf)) })}</p>
    </BelowTable>
  );
}
