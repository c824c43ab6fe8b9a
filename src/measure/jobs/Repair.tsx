import { isNumeric, WARMTHS, type Hypothesis, type TakenReading } from '../../diagnosis/index.ts';
import { printed } from '../../planner/amounts.ts';
import { nameOf, shownIn } from '../../planner/reading-text.ts';
import { format } from '../../quantity/print.ts';
import { temperature, temperatureRise } from '../../quantity/quantities.ts';
import { rangeWords } from '../../quantity/refusals.ts';
import type { UnitSystem } from '../../quantity/unit-system.ts';
import { useUnits } from '../../ui/use-units.ts';
import { Day } from './Day.tsx';
import { daysOfColumn } from './days.ts';
import type { JobsModel } from './model.ts';
import { SAME_C } from '../../diagnosis/before-after.ts';
import { healthyOf, offAfter, proofOf, unrepeated, type Pair } from './pairs.ts';
import type { Sheet } from './sheet.ts';
import { words } from './sheet-words.en.ts';
import { Typed } from './Typed.tsx';

const { repair } = words;
/** The title over the repair: whoever asks what it has proved is led there. */
export const REPAIR_TITLE = 'job-repair-title';

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

/** What a healthy car shows in the test of a reading, in words. */
const healthyIn = (taken: TakenReading, sound: Hypothesis, system: UnitSystem): string =>
  shownIn({ ...taken, value: healthyOf(taken, sound) }, system);

/** How a reading stands to a healthy car, in a sentence; of one that is off, by how much. */
function standingWords({ is, after }: Pair, sound: Hypothesis | null, system: UnitSystem): string {
  if (is !== 'off' || sound === null) return is === 'right' ? repair.right : repair.unknown;
  const { test, value } = after.taken;
  const healthy = healthyIn(after.taken, sound, system);
  if (!isNumeric(test)) return repair.offSeen({ healthy });
  if (value === null) return repair.off({ healthy });
  const by = (value as number) - (healthyOf(after.taken, sound) as number);
  const figures = { healthy, by: printed(test, Math.abs(by), system) };
  return by > 0 ? repair.over(figures) : repair.under(figures);
}

/** The car with nothing wrong that readings are judged by; null while there is none. */
export const soundOf = (sheet: Sheet): Hypothesis | null =>
  sheet.planner.grounds.value?.sound ?? null;

/** The proof of the job, as its sheet has it. */
export const proofFor = (sheet: Sheet) =>
  proofOf(sheet.pairs.value, sheet.before.value, sheet.after.value, soundOf(sheet));

/** Why no reading of the job is judged; empty where they are. */
export function unjudgedWords(sheet: Sheet): string {
  const { table, tableIs, lost } = sheet.planner;
  if (soundOf(sheet) !== null) return '';
  if (lost.value) return repair.unjudged.missed;
  // Its table is there, and what a healthy car shows comes out of it in a moment.
  return repair.unjudged[table.value === null ? tableIs.value : 'ready'];
}

function stillOffWords(sheet: Sheet, sound: Hypothesis, system: UnitSystem): string {
  const off = offAfter(sheet.after.value, sound);
  const readings = off.map(({ taken }) =>
    repair.offOne({
      test: nameOf(taken.test, system),
      value: shownIn(taken, system),
      healthy: healthyIn(taken, sound, system),
    }),
  );
  const said = repair.stillOff({ readings: readings.join('; ') });
  return off.some(({ later }) => later) ? `${said} ${repair.rightLater}` : said;
}

/** The proof in words, with the readings that stand against it and the tests that it still lacks. */
export function proofWords(sheet: Sheet, system: UnitSystem): string {
  const proof = proofFor(sheet);
  const sound = soundOf(sheet);
  if (proof === 'none') return repair.proofs.none;
  if (proof === 'unjudged' || sound === null) return unjudgedWords(sheet);
  if (proof === 'stillOff') return stillOffWords(sheet, sound, system);
  if (proof !== 'partly') return repair.proofs[proof];
  const tests = unrepeated(sheet.before.value, sheet.after.value, sound);
  return repair.partly({ tests: tests.map((test) => nameOf(test, system)).join('; ') });
}

/** What was done, and the same tests before and after it. */
export function Repair({ jobs, sheet }: { readonly jobs: JobsModel; readonly sheet: Sheet }) {
  const pairs = sheet.pairs.value;
  const system = useUnits();
  return (
    <section class="job-part" aria-labelledby={REPAIR_TITLE}>
      <h3 id={REPAIR_TITLE} tabIndex={-1}>
        {repair.title}
      </h3>
      <Typed
        jobs={jobs}
        sheet={sheet}
        entry="repair"
        label={repair.done}
        how={repair.doneHow}
        rows={4}
      />
      {pairs.length === 0 ? <p class="muted">{repair.pairsNone}</p> : <PairTable sheet={sheet} />}
      <p role="status">
        <strong>{proofWords(sheet, system)}</strong>
      </p>
      {soundOf(sheet) !== null && (
        <p class="muted">{repair.limits[sheet.planner.basis.value?.kind ?? 'training']}</p>
      )}
    </section>
  );
}

export function PairTable({ sheet }: { readonly sheet: Sheet }) {
  const system = useUnits();
  const pairs = sheet.pairs.value;
  const before = daysOfColumn(pairs.map((pair) => pair.before));
  const after = daysOfColumn(pairs.map((pair) => pair.after));
  return (
    <div class="table-scroll" tabIndex={0} role="region" aria-label={repair.caption}>
      <table class="job-pairs">
        <caption class="visually-hidden">{repair.caption}</caption>
        <thead>
          <tr>
            <th scope="col">{repair.test}</th>
            <th scope="col">
              {repair.before} <Day day={before.over} />
            </th>
            <th scope="col">
              {repair.after} <Day day={after.over} />
            </th>
          </tr>
        </thead>
        {/* A body each, which no page break parts. */}
        {pairs.map((pair) => (
          <tbody key={pair.after.id}>
            <tr>
              <th scope="row">{nameOf(pair.before.taken.test, system)}</th>
              <td>
                {shownIn(pair.before.taken, system)} <Day day={before.beside(pair.before)} />
              </td>
              <td>
                {shownIn(pair.after.taken, system)} <Day day={after.beside(pair.after)} />
              </td>
            </tr>
            <tr class="job-says">
              <td colSpan={3}>
                {standingWords(pair, soundOf(sheet), system)} {sameWords(pair, system)}
              </td>
            </tr>
          </tbody>
        ))}
      </table>
    </div>
  );
}
