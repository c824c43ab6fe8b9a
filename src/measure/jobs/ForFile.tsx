import { WARMTHS } from '../../diagnosis/index.ts';
import { FromYours } from '../../planner/FromYours.tsx';
import { share, twoFaultWords } from '../../planner/Lists.tsx';
import { nameOf, shownIn } from '../../planner/reading-text.ts';
import { words as plannerWords } from '../../planner/words.en.ts';
import { format } from '../../quantity/print.ts';
import { temperature } from '../../quantity/quantities.ts';
import type { UnitSystem } from '../../quantity/unit-system.ts';
import { useUnits } from '../../ui/use-units.ts';
import { dateAndTimeOf, dateOf } from '../../ui/dates.ts';
import { byDay } from './days.ts';
import { labelOf } from './label-of.ts';
import { words as paper } from './paper-words.en.ts';
import { PairTable, proofWords, unjudgedWords } from './Repair.tsx';
import type { Sheet, SheetReading } from './sheet.ts';
import { words } from './sheet-words.en.ts';
import { typedIn } from './typed-in.ts';

const { forFile: said } = paper;
/** From this share on a cause is printed, and so many tests. */
const PRINTED = 0.02;
const TESTS_LEFT = 5;

function warmthOf({ taken }: SheetReading, system: UnitSystem): string {
  if (taken?.test.at.warmth === undefined) return '';
  return taken.temperatureC === undefined
    ? said.usual(format(WARMTHS[taken.test.at.warmth].at, temperature, system))
    : format(taken.temperatureC, temperature, system);
}

interface TakenProps {
  readonly phase: string;
  readonly some: readonly SheetReading[];
  readonly clashing: ReadonlySet<string>;
}

/** The readings before the repair or after it, under the days on which they were taken down. */
function Taken({ phase, some, clashing }: TakenProps) {
  const system = useUnits();
  const days = byDay(some);
  const [{ day: only } = { day: '' }, another] = days;
  const isOne = another === undefined && only !== '';
  return (
    <table>
      <caption>{isOne ? said.phase({ phase, day: only }) : phase}</caption>
      <thead>
        <tr>
          <th scope="col">{said.test}</th>
          <th scope="col">{said.showed}</th>
          <th scope="col">{said.temperature}</th>
          <th scope="col">{said.typed}</th>
        </tr>
      </thead>
      {days.map(({ day, from, some: ofDay }) => (
        <tbody key={from}>
          {!isOne && day !== '' && (
            <tr class="job-day">
              <th colSpan={4} scope="rowgroup">
                {words.readings.day(day)}
              </th>
            </tr>
          )}
          {ofDay.map((one) => (
            <tr key={one.id}>
              <th scope="row">
                {one.taken === null ? one.test : nameOf(one.taken.test, system)}
                {clashing.has(one.id) && <strong> {said.clash}</strong>}
              </th>
              <td>{one.taken === null ? '' : shownIn(one.taken, system)}</td>
              <td>{warmthOf(one, system)}</td>
              <td>{typedIn(one)}</td>
            </tr>
          ))}
        </tbody>
      ))}
    </table>
  );
}

/** The page for the file: every reading with its conditions, what fits, what is left. */
export function ForFile({ sheet }: { readonly sheet: Sheet }) {
  const system = useUnits();
  const job = sheet.job.value;
  if (job === undefined) return null;
  const { planner } = sheet;
  const advice = planner.advice.value;
  const misfit = twoFaultWords(advice, system);
  const phases = [
    [words.form.before, sheet.readings.value.filter(({ phase }) => phase === 'before')],
    [words.form.after, sheet.readings.value.filter(({ phase }) => phase === 'after')],
  ] as const;
  const clashing = new Set(sheet.clashes.value.flat());
  const tapped = sheet.readings.value.some(({ taken }) => taken?.test.kind === 'clutchPressure');
  return (
    <article class="job-page job-for-file">
      <p class="job-kicker">{said.kicker}</p>
      <h1>{labelOf(job)}</h1>
      <p class="muted">
        {said.started(dateOf(job.created))}. {said.printed(dateAndTimeOf(Date.now()))}.
      </p>
      <p class="job-text">{said.complaint(job.complaint.value.trim() || said.noComplaint)}</p>
      <h2>{said.readings}</h2>
      {sheet.readings.value.length === 0 && <p>{said.none}</p>}
      {phases.map(
        ([phase, some]) =>
          some.length > 0 && <Taken key={phase} phase={phase} some={some} clashing={clashing} />,
      )}
      {!tapped && <p>{said.notMeasured}</p>}
      {planner.weighing.value && <p>{said.weighing}</p>}
      {advice === null && sheet.after.value.length === 0 && <p>{unjudgedWords(sheet)}</p>}
      {advice && !planner.weighing.value && (
        <>
          <h2>{said.causes}</h2>
          <FromYours model={planner} />
          <ul>
            {advice.faults
              .filter(({ probability }) => probability >= PRINTED)
              .map(({ fault, probability }) => (
                <li key={fault}>
                  {said.cause({
                    fault: plannerWords.faults[fault],
                    share: share(probability, system),
                  })}
                </li>
              ))}
          </ul>
          {misfit !== '' && <p>{misfit}</p>}
          <h2>{said.left}</h2>
          {planner.ranking.value ? null : advice.next.length === 0 ? (
            <p>{said.noneLeft}</p>
          ) : (
            <ul>
              {advice.next.slice(0, TESTS_LEFT).map(({ test, minutes }) => (
                <li key={test.id}>
                  {said.leftOne({
                    test: nameOf(test, system),
                    minutes: String(Math.round(minutes)),
                  })}
                </li>
              ))}
            </ul>
          )}
        </>
      )}
      <h2>{said.repair}</h2>
      <p class="job-text">{job.repair.value.trim() || said.nothingDone}</p>
      <h2>{said.proof}</h2>
      {sheet.pairs.value.length > 0 && <PairTable sheet={sheet} />}
      <p>{proofWords(sheet, system)}</p>
      {job.notes.value.trim() !== '' && (
        <>
          <h2>{said.notes}</h2>
          <p class="job-text">{job.notes.value}</p>
        </>
      )}
      {advice && <p class="muted">{said.assumed[planner.basis.value?.kind ?? 'training']}</p>}
    </article>
  );
}
