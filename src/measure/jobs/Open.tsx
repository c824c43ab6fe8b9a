import { SURE, type Outcome } from '../../diagnosis/index.ts';
import { nameOf, shownIn } from '../../planner/reading-text.ts';
import { words as plannerWords } from '../../planner/words.en.ts';
import { listOf } from '../../quantity/lists.ts';
import { useUnits } from '../../ui/use-units.ts';
import type { UnitSystem } from '../../quantity/unit-system.ts';
import type { Sheet } from './sheet.ts';
import { noTestLeft } from '../../planner/no-test-left.ts';
import { words } from './sheet-words.en.ts';

/** From this share on a cause is still open. */
const OPEN = 0.04;

function outcomeWords({ reading, out }: Outcome, system: UnitSystem): string {
  const { outcomes } = words;
  const test = nameOf(reading.test, system);
  const faults = listOf(out.map((name) => plannerWords.faults[name]));
  const value = shownIn(reading, system);
  if (reading.value === null) return outcomes.never({ test, faults });
  return typeof reading.value === 'string'
    ? outcomes.shows({ test, value, faults })
    : outcomes.rulesOut({ test, value, faults });
}

/** What is still open, what the next test would settle, and when measuring on is not worth its minutes. */
export function Open({ sheet }: { readonly sheet: Sheet }) {
  const system = useUnits();
  const advice = sheet.planner.advice.value;
  if (advice === null || sheet.planner.ranking.value) return null;
  const { open, outcomes } = words;
  const left = advice.faults.filter(({ probability }) => probability >= OPEN);
  const [top] = advice.faults;
  const minutes = Math.min(...advice.next.map((one) => one.minutes));
  const settled = advice.outcomes;
  return (
    <section class="job-open" aria-label={open.title}>
      <h3>{open.title}</h3>
      <p>
        {open.between({ faults: listOf(left.map(({ fault }) => plannerWords.faults[fault])) })}{' '}
        {advice.next.length === 0 || advice.clash === true
          ? noTestLeft(advice)
          : top !== undefined && top.probability >= SURE && top.fault !== 'unlisted'
            ? open.sure({ fault: plannerWords.faults[top.fault] })
            : open.worth({ minutes: String(Math.round(minutes)) })}
      </p>
      {advice.next.length > 0 && (
        <>
          <h4>{outcomes.title}</h4>
          {settled.length === 0 ? (
            <p>{outcomes.nothing}</p>
          ) : (
            <ul>
              {settled.map((one) => (
                <li key={String(one.reading.value)}>{outcomeWords(one, system)}</li>
              ))}
            </ul>
          )}
        </>
      )}
    </section>
  );
}
