import { areTwo, isNumeric, missingFor, SURE, type Finding } from '../diagnosis/index.ts';
import { listOf } from '../quantity/lists.ts';
import { printer } from '../quantity/print.ts';
import { percent } from '../quantity/quantities.ts';
import type { UnitSystem } from '../quantity/unit-system.ts';
import { useUnits } from '../ui/use-units.ts';
import { printed } from './amounts.ts';
import { BeforeTest } from './BeforeTest.tsx';
import { FromYours } from './FromYours.tsx';
import type { Proposal as Proposed } from './messages.ts';
import type { Advice, PlannerModel } from './model.ts';
import { words as list } from './list-words.en.ts';
import { noTestLeft } from './no-test-left.ts';
import { words as now } from './now-words.en.ts';
import { nameOf, needsOf } from './reading-text.ts';
import { beyondOne } from './two-faults.ts';
import { words } from './words.en.ts';

interface ListProps {
  readonly model: PlannerModel;
}

/** How many names are shown by themselves. */
const SHOWN = 5;
/** Less than this is not shown by itself. */
const SEEN = 0.01;

/** No reading proves anything to the last hundredth. */
const MOST = 0.99;
const LEAST = 0.01;
export const share = (part: number, system: UnitSystem): string => {
  const print = printer(system);
  if (part > MOST) return list.over({ percent: print(100 * MOST, percent) });
  return part < LEAST
    ? list.under({ percent: print(100 * LEAST, percent) })
    : print(100 * part, percent);
};

/** The list of causes, likeliest first. */
export function Causes({ model }: ListProps) {
  const system = useUnits();
  const advice = model.advice.value;
  if (advice === null) return null;
  const { faults } = advice;
  const shown = faults.filter(({ probability }) => probability >= SEEN).slice(0, SHOWN);
  const rest = 1 - shown.reduce((sum, { probability }) => sum + probability, 0);
  const [top] = faults;
  const isPair = advice.two !== null && areTwo(advice.two);
  const severity = ({ severity: points }: Finding): string =>
    points === undefined
      ? ''
      : list.severity({
          from: printer(system)(100 * points[0], percent),
          to: printer(system)(100 * points[2], percent),
        });
  return (
    <section class="next-causes" aria-label={list.title}>
      <h3>{list.title}</h3>
      <FromYours model={model} />
      <ol>
        {shown.map((finding) => (
          <li key={finding.fault}>
            <span class="next-name">{words.faults[finding.fault]}</span>{' '}
            <strong>{share(finding.probability, system)}</strong>
            <svg class="next-bar" viewBox="0 0 100 6" preserveAspectRatio="none" aria-hidden="true">
              <rect class="next-all" x="0" y="0" width="100" height="6" />
              <rect class="next-part" x="0" y="0" width={100 * finding.probability} height="6" />
            </svg>
            <span class="muted">{severity(finding)}</span>
          </li>
        ))}
      </ol>
      {rest >= SEEN && <p class="muted">{list.rest({ percent: share(rest, system) })}</p>}
      {advice.clash === false &&
        top !== undefined &&
        top.probability >= SURE &&
        !(top.fault === 'unlisted' && isPair) && (
          <p role="status">
            {top.fault === 'unlisted'
              ? list.outside
              : list.sure({
                  fault: words.faults[top.fault],
                  percent: share(top.probability, system),
                })}
          </p>
        )}
      <TwoFaults model={model} />
    </section>
  );
}

/** What there is to say where one fault does not explain it all; nothing where one does. */
export function twoFaultWords(advice: Advice | null, system: UnitSystem): string {
  const { faults, clutches } = words;
  if (advice === null) return '';
  // What explains readings that cannot all be right explains nothing.
  if (advice.clash === true) return now.clashing;
  const best = beyondOne(advice);
  if (best === null) return '';
  if (best === 'misfit') return list.twoFaults;
  if (best === 'many') return list.manyPairs;
  const [first, second] = best.of.map(({ name, circuit }) =>
    circuit === undefined
      ? faults[name]
      : list.inClutch({ fault: faults[name], clutch: clutches[circuit] }),
  );
  const pair = list.pair({
    first: first ?? '',
    second: second ?? '',
    percent: share(best.share, system),
  });
  // A few numbers from anywhere find a pair as well, and then what is not in the list stands before all.
  const doubtful = advice.faults[0]?.fault === 'unlisted';
  return `${pair} ${doubtful ? list.notYet : list.repairOne}`;
}

function TwoFaults({ model }: ListProps) {
  const said = twoFaultWords(model.advice.value, useUnits());
  return said === '' ? null : <p role="status">{said}</p>;
}

/** How many tests are proposed. */
const PROPOSED = 4;
const tells = (bits: number): string => {
  const { much, some, little } = words.next.tells;
  return bits >= 0.8 ? much : bits >= 0.3 ? some : little;
};

function Proposal({ model, ranked }: ListProps & { readonly ranked: Proposed }) {
  const system = useUnits();
  const { next } = words;
  const { test, bits, minutes, expects } = ranked;
  const { state } = model.stands.value;
  const missing = missingFor(test, state);
  return (
    <li>
      <p class="next-head">
        <strong>{nameOf(test, system)}</strong>
        <span>{next.takes({ minutes: String(Math.round(minutes)) })}</span>
      </p>
      <p>
        {tells(bits)} {needsOf(missing, system)}
      </p>
      {isNumeric(test) && test.kind !== 'stopTime' && (
        <p class="muted">
          {next.expected}{' '}
          {listOf(
            expects.map(({ fault, value }) =>
              next.ifSo({ fault: words.faults[fault], value: printed(test, value, system) }),
            ),
          )}
          .
        </p>
      )}
      <BeforeTest test={test} />
      <button type="button" class="quiet" onClick={() => model.form.begin(test.id)}>
        {next.did}
      </button>
    </li>
  );
}

/** The tests that tell most for their minutes. */
export function Next({ model }: ListProps) {
  const advice = model.advice.value;
  if (advice === null) return null;
  const { next } = words;
  return (
    <section class="next-tests" aria-label={next.title}>
      <h3>{next.title}</h3>
      <FromYours model={model} />
      {model.ranking.value ? (
        <p>{next.working}</p>
      ) : advice.next.length === 0 ? (
        <p>{noTestLeft(advice)}</p>
      ) : (
        <ol>
          {advice.next.slice(0, PROPOSED).map((ranked) => (
            <Proposal key={ranked.test.id} model={model} ranked={ranked} />
          ))}
        </ol>
      )}
    </section>
  );
}
