import {
  isFault,
  isNumeric,
  type FaultClass,
  type TakenReading,
  type Test,
} from '../../diagnosis/index.ts';
import { shownIn } from '../../planner/reading-text.ts';
import { words as plannerWords } from '../../planner/words.en.ts';
import type { UnitSystem } from '../../quantity/unit-system.ts';
import { useUnits } from '../../ui/use-units.ts';
import { dateOf } from '../../ui/dates.ts';
import { Day } from './Day.tsx';
import { daysOfColumn } from './days.ts';
import { foundIn, type Found } from './found.ts';
import { labelOf } from './label-of.ts';
import { words as paper } from './paper-words.en.ts';
import { offBefore, standingOf } from './pairs.ts';
import { proofFor, soundOf } from './Repair.tsx';
import type { Sheet } from './sheet.ts';

const { forCustomer: said } = paper;

const plainName = ({ kind, at }: Test): string =>
  said.plain[kind]({
    range: at.range === undefined ? '' : said.ranges[at.range],
    circuit: at.circuit === undefined ? '' : said.circuits[at.circuit],
    warm: said.warm[at.warmth ?? ''] ?? '',
  });

function plainValue(taken: TakenReading, system: UnitSystem): string {
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
    all.filter(({ taken }) => taken.test.id === id);
  const [before, after] = [sheet.before.value, sheet.after.value];
  const tests = new Map([...before, ...after].map(({ taken: { test } }) => [test.id, test]));
  const rows = [...tests.values()].map((test) => {
    const since = of(after, test.id).map((one) => ({
      one,
      off: standingOf(one.taken, sound) === 'off',
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

const causeOf = ({ name, circuit }: FaultClass): string => {
  const cause = isFault(name) ? said.causes[name] : '';
  return circuit === undefined ? cause : `${cause} (${plannerWords.clutches[circuit]})`;
};

function foundWords(found: Found): string {
  const { found: words, causes } = said;
  if (found.kind === 'sure') return words.sure({ cause: causes[found.cause] });
  if (found.kind === 'pair') {
    const [first, second] = found.pair.of;
    return words.pair({ first: causeOf(first), second: causeOf(second) });
  }
  if (found.kind !== 'open') return words[found.kind];
  const open = words.open({ likeliest: causes[found.likeliest] });
  const others = found.others.map((one) => causes[one]).join('; ');
  return others === '' ? open : `${open} ${words.others({ causes: others })}`;
}

const judges = ({ kind }: Found): boolean => kind !== 'unread' && kind !== 'unjudged';

interface FoundProps {
  readonly sheet: Sheet;
  readonly found: Found;
  readonly goesBy: string;
}

/** What the readings before the repair were, what they come to, and by what. */
function WhatWasFound({ sheet, found, goesBy }: FoundProps) {
  const off = offBefore(sheet.before.value, soundOf(sheet));
  const { title, right, off: offWords } = said.found;
  return (
    <>
      <h2>{title}</h2>
      {judges(found) && (
        <p>{off.length === 0 ? right : offWords({ tests: off.map(plainName).join('; ') })}</p>
      )}
      <p>{foundWords(found)}</p>
      {judges(found) && <p>{goesBy}</p>}
    </>
  );
}

/** The page for the customer: the complaint, what was found and measured, what was done, how one knows. */
export function ForCustomer({ sheet }: { readonly sheet: Sheet }) {
  const system = useUnits();
  const job = sheet.job.value;
  if (job === undefined) return null;
  const rows = rowsOf(sheet);
  const proof = proofFor(sheet);
  const complaint = job.complaint.value.trim();
  const found = foundIn(sheet);
  const goesBy = said.goesBy[sheet.planner.basis.value?.kind ?? 'training'];
  const measured = [...sheet.before.value, ...sheet.after.value].length > 0;
  const days = {
    before: daysOfColumn(rows.flatMap(({ one }) => one ?? [])),
    after: daysOfColumn(rows.flatMap(({ since }) => since.map(({ one }) => one))),
  };
  const nothing = sheet.after.value.length > 0 ? said.notEntered : said.nothingDone;
  return (
    <article class="job-page job-for-customer">
      <p class="job-kicker">{said.kicker}</p>
      <h1>{said.title}</h1>
      <p class="muted">
        {said.about(labelOf(job))}. {dateOf(Date.now())}.
      </p>
      {complaint !== '' && (
        <>
          <h2>{said.complaint}</h2>
          <p class="job-text">{complaint}</p>
        </>
      )}
      {measured && <WhatWasFound sheet={sheet} found={found} goesBy={goesBy} />}
      {rows.length > 0 && (
        <>
          <h2>{said.measured}</h2>
          <p>{said.measuredHow}</p>
          <table>
            <thead>
              <tr>
                <th scope="col">{said.test}</th>
                <th scope="col">
                  {said.before} <Day day={days.before.over} />
                </th>
                <th scope="col">
                  {said.after} <Day day={days.after.over} />
                </th>
              </tr>
            </thead>
            <tbody>
              {rows.map(({ test, one, since }) => (
                <tr key={test.id}>
                  <th scope="row">{plainName(test)}</th>
                  <td>
                    {one === undefined ? said.notBefore : plainValue(one.taken, system)}{' '}
                    {one && <Day day={days.before.beside(one)} />}
                  </td>
                  <td>
                    {since.length === 0 && said.notAgain}
                    {since.map(({ one: later, off }) => (
                      <p key={later.id}>
                        {plainValue(later.taken, system)} {off && <strong>{said.off}</strong>}{' '}
                        <Day day={days.after.beside(later)} />
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
      {proof !== 'none' && proof !== 'unjudged' && !judges(found) && <p>{goesBy}</p>}
      <p>{said.next}</p>
      <p class="job-sign">{said.sign}</p>
    </article>
  );
}
