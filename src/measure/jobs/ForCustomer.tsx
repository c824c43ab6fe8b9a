import { isNumeric, type TakenReading, type Test } from '../../diagnosis/index.ts';
import { shownIn } from '../../planner/reading-text.ts';
import type { UnitSystem } from '../../quantity/unit-system.ts';
import { useUnits } from '../../ui/use-units.ts';
import { dateOf } from '../../ui/dates.ts';
import { words as paper } from './paper-words.en.ts';
import { standingOf } from './pairs.ts';
import { proofFor, soundOf } from './Repair.tsx';
import type { Sheet } from './sheet.ts';

const { forCustomer: said } = paper;

const plainName = ({ kind, at }: Test): string =>
  said.plain[kind]({
    range: at.range === undefined ? '' : said.ranges[at.range],
    circuit: at.circuit === undefined ? '' : said.circuits[at.circuit],
    warm: said.warm[at.warmth ?? ''] ?? '',
  });

function plainValue(taken: TakenReading | undefined, missing: string, system: UnitSystem): string {
  if (taken === undefined) return missing;
  const { test, value } = taken;
  if (isNumeric(test) && value === null) return said.never;
  if (test.kind !== 'codes') return shownIn(taken, system);
  const count = (value as readonly string[]).length;
  return count === 0 ? said.noCodes : said.codes(String(count));
}

/** What was measured of one test: last before, and after the last with whatever is not what it should be, or all where nothing tells. */
function rowsOf(sheet: Sheet) {
  const sound = soundOf(sheet);
  const of = (all: typeof sheet.before.value, id: string) =>
    all.filter(({ taken }) => taken.test.id === id).map(({ taken }) => taken);
  const [before, after] = [sheet.before.value, sheet.after.value];
  const tests = new Map([...before, ...after].map(({ taken: { test } }) => [test.id, test]));
  const rows = [...tests.values()].map((test) => {
    const since = of(after, test.id).map((taken) => ({
      taken,
      off: standingOf(taken, sound) === 'off',
    }));
    return {
      test,
      one: of(before, test.id).at(-1),
      since: since.filter(({ off }, n) => off || sound === null || n === since.length - 1),
    };
  });
  const repeated = rows.filter(({ one, since }) => one !== undefined && since.length > 0);
  // What was repeated after the repair is what tells a customer something, and what is off; without any, all of it.
  return repeated.length === 0
    ? rows
    : rows.filter((row) => repeated.includes(row) || row.since.some(({ off }) => off));
}

/** The page for the customer: what was measured, what was done, how one knows. */
export function ForCustomer({ sheet }: { readonly sheet: Sheet }) {
  const system = useUnits();
  const job = sheet.job.value;
  if (job === undefined) return null;
  const rows = rowsOf(sheet);
  const proof = proofFor(sheet);
  const nothing = sheet.after.value.length > 0 ? said.notEntered : said.nothingDone;
  return (
    <article class="job-page job-for-customer">
      <p class="job-kicker">{said.kicker}</p>
      <h1>{said.title}</h1>
      <p class="muted">
        {said.about(job.label.value)}. {dateOf(Date.now())}.
      </p>
      {rows.length > 0 && (
        <>
          <h2>{said.measured}</h2>
          <p>{said.measuredHow}</p>
          <table>
            <thead>
              <tr>
                <th scope="col">{said.test}</th>
                <th scope="col">{said.before}</th>
                <th scope="col">{said.after}</th>
              </tr>
            </thead>
            <tbody>
              {rows.map(({ test, one, since }) => (
                <tr key={test.id}>
                  <th scope="row">{plainName(test)}</th>
                  <td>{plainValue(one, said.notBefore, system)}</td>
                  <td>
                    {since.length === 0 && said.notAgain}
                    {since.map(({ taken, off }, n) => (
                      <p key={n}>
                        {plainValue(taken, '', system)} {off && <strong>{said.off}</strong>}
                      </p>
                    ))}
                  </td>
                </tr>
              ))}
            </tbody>
          </table>
        </>
      )}
      <h2>{said.done}</h2>
      <p class="job-text">{job.repair.value.trim() || nothing}</p>
      <h2>{said.proof}</h2>
      <p>{said.proofs[proof]}</p>
      {proof !== 'none' && proof !== 'unjudged' && (
        <p>{said.goesBy[sheet.planner.basis.value?.kind ?? 'training']}</p>
      )}
      <p>{said.next}</p>
      <p class="job-sign">{said.sign}</p>
    </article>
  );
}
