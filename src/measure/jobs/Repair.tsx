import { Fragment } from 'preact';
import { WARMTHS } from '../../diagnosis/index.ts';
import { nameOf, shownIn } from '../../planner/reading-text.ts';
import { format } from '../../quantity/print.ts';
import { temperature, temperatureRise } from '../../quantity/quantities.ts';
import { rangeWords } from '../../quantity/refusals.ts';
import type { UnitSystem } from '../../quantity/unit-system.ts';
import { useUnits } from '../../ui/use-units.ts';
import type { JobsModel } from './model.ts';
import { SAME_C } from '../../diagnosis/before-after.ts';
import { proofOf, unrepeated, type Pair } from './pairs.ts';
import type { Sheet } from './sheet.ts';
import { words } from './sheet-words.en.ts';
import { Typed } from './Typed.tsx';

const { repair } = words;

/** Whether a pair was taken at one temperature, in a sentence. */
export function sameWords({ before, apart, same }: Pair, system: UnitSystem): string {
  const { warmth } = before.taken.test.at;
  if (warmth === undefined) return repair.needless;
  const { at, from, to } = WARMTHS[warmth];
  const rise = (by: number) => format(by, temperatureRise, system);
  if (same === 'unwritten') return repair.unwritten({ usual: format(at, temperature, system) });
  if (same === 'same') return repair.same(rise(apart ?? 0));
  return repair.apart({
    apart: rise(apart ?? 0),
    same: rise(SAME_C),
    band: rangeWords({ min: from, max: to }, temperature, system),
  });
}

const soundOf = (sheet: Sheet) => sheet.planner.grounds.value?.sound ?? null;

/** The proof of the job, as its sheet has it. */
export const proofFor = (sheet: Sheet) =>
  proofOf(sheet.pairs.value, sheet.before.value, sheet.after.value, soundOf(sheet));

/** The proof in words, with the tests that it still lacks. */
export function proofWords(sheet: Sheet, system: UnitSystem): string {
  const proof = proofFor(sheet);
  if (proof !== 'partly') return repair.proofs[proof];
  const tests = unrepeated(sheet.before.value, sheet.after.value, soundOf(sheet));
  return repair.partly({ tests: tests.map((test) => nameOf(test, system)).join('; ') });
}

/** What was done, and the same tests before and after it. */
export function Repair({ jobs, sheet }: { readonly jobs: JobsModel; readonly sheet: Sheet }) {
  const pairs = sheet.pairs.value;
  const system = useUnits();
  return (
    <section class="job-part" aria-labelledby="job-repair-title">
      <h3 id="job-repair-title">{repair.title}</h3>
      <Typed
        jobs={jobs}
        sheet={sheet}
        entry="repair"
        label={repair.done}
        how={repair.doneHow}
        long
      />
      {pairs.length === 0 ? <p class="muted">{repair.pairsNone}</p> : <PairTable pairs={pairs} />}
      <p role="status">
        <strong>{proofWords(sheet, system)}</strong>
      </p>
      <p class="muted">{repair.limits[sheet.planner.basis.value?.kind ?? 'training']}</p>
    </section>
  );
}

export function PairTable({ pairs }: { readonly pairs: readonly Pair[] }) {
  const system = useUnits();
  return (
    <div class="table-scroll" tabIndex={0} role="region" aria-label={repair.caption}>
      <table class="job-pairs">
        <caption class="visually-hidden">{repair.caption}</caption>
        <thead>
          <tr>
            <th scope="col">{repair.test}</th>
            <th scope="col">{repair.before}</th>
            <th scope="col">{repair.after}</th>
          </tr>
        </thead>
        <tbody>
          {pairs.map((pair) => (
            <Fragment key={pair.after.id}>
              <tr>
                <th scope="row">{nameOf(pair.before.taken.test, system)}</th>
                <td>{shownIn(pair.before.taken, system)}</td>
                <td>{shownIn(pair.after.taken, system)}</td>
              </tr>
              <tr class="job-says">
                <td colSpan={3}>
                  {repair.standing[pair.is]} {sameWords(pair, system)}
                </td>
              </tr>
            </Fragment>
          ))}
        </tbody>
      </table>
    </div>
  );
}
