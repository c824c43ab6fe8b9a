import { words as car } from '../car/words.en.ts';
import { judge, shareOf, type Named } from '../cases/judge.ts';
import { listedAs, NOTHING_TOLD, type Move, type Role, type Stage } from '../cases/path.ts';
import { inOneCircuit, type Name } from '../diagnosis/index.ts';
import type { Listed, WayTest } from '../planner/messages.ts';
import { share } from '../planner/Lists.tsx';
import { nameOf, shownIn } from '../planner/reading-text.ts';
import { listOf, plural } from '../quantity/lists.ts';
import { useUnits } from '../ui/use-units.ts';
import type { BenchCase } from './bench-case.ts';
import { lineOf } from './Known.tsx';
import type { CaseModel } from './model.ts';
import { words as said } from './outcome-words.en.ts';
import { words } from './words.en.ts';

/** With a stop at its end, which what a customer says brings along. */
const ended = (line: string): string => (/[.?!]”?$/u.test(line) ? line : `${line}.`);

/** Names with less than this are not told. */
const SEEN = 0.05;

/** A cause with its clutch. */
export const named = ({ cause, circuit }: Named): string =>
  circuit === undefined
    ? words.causes[cause]
    : said.in({ cause: words.causes[cause], clutch: car.clutches[circuit] });

interface YourWayProps {
  readonly model: CaseModel;
  readonly stages: readonly Stage[];
  readonly end: Listed;
  /** What was answered and what it was, among the names of the list. */
  readonly roles: ReadonlyMap<Name, Role>;
  /** How far the readings carried the answer. */
  readonly children: string;
}

/** Each step with what it did to the list. */
export function YourWay({ model, stages, end, roles, children }: YourWayProps) {
  const system = useUnits();
  const { path } = said;
  // What every step of a kind has in common is said once, and minutes where there are some.
  const heard = new Set<string>();
  const after = (stage: Stage): string => {
    const { kind } = stage.step;
    const again = kind !== 'test' && heard.has(kind);
    heard.add(kind);
    const minutes = String(Math.round(stage.minutes));
    if (!again) return path.took({ minutes, did: did(stage) });
    return minutes === '0' ? '' : path.takes({ minutes });
  };
  const toldNothing = ({ told }: Stage): boolean => told !== undefined && told < NOTHING_TOLD;
  const did = (stage: Stage): string => {
    if (stage.step.kind === 'ask') return path.asked;
    if (stage.step.kind === 'look') return path.looked;
    return toldNothing(stage) ? path.nothing : '';
  };
  const movesIn = (stage: Stage): readonly Move[] =>
    toldNothing(stage) ? [] : (stage.moves ?? []);
  const move = ({ fault, before, after: now }: Move): string => {
    const role = roles.get(fault);
    const [from, to] = [share(before, system), share(now, system)];
    const name = words.causes[fault];
    return path.of({
      role: role === undefined ? path.most : path.role[role],
      fault: inOneCircuit(fault) ? path.inAny({ fault: name }) : name,
      move: from === to ? path.stayed({ share: to }) : path.moved({ before: from, after: to }),
    });
  };
  const wasted = stages.filter(toldNothing).reduce((sum, { minutes }) => sum + minutes, 0);
  const open = end.faults.filter(({ probability }) => probability >= SEEN).slice(0, 4);
  return (
    <>
      <h4>{path.title}</h4>
      <p>{children}</p>
      {stages.length === 0 ? (
        <p>{path.none}</p>
      ) : (
        <ol class="case-planned">
          {stages.map((stage) => (
            <li key={`${stage.step.kind} ${stage.step.what}`}>
              {ended(lineOf(model, stage.step, system))} <span class="muted">{after(stage)}</span>
              {movesIn(stage).length > 0 && (
                <ul class="case-moves">
                  {movesIn(stage).map((one) => (
                    <li key={one.fault}>{ended(move(one))}</li>
                  ))}
                </ul>
              )}
            </li>
          ))}
        </ol>
      )}
      {wasted > 0 && <p>{path.wasted({ minutes: String(Math.round(wasted)) })}</p>}
      <p>
        {(end.steps.length > 1 ? path.open : path.unread)({
          list: listOf(
            open.map(({ fault, probability }) =>
              path.one({ fault: words.causes[fault], share: share(probability, system) }),
            ),
          ),
        })}
      </p>
      <Stood model={model} end={end} />
    </>
  );
}

/** Where the readings left the answer and the real cause, in the clutch that was named. */
function Stood({ model, end }: Pick<YourWayProps, 'model' | 'end'>) {
  const system = useUnits();
  const { path } = said;
  const { causes: yours } = model.conclusion.value;
  const { causes: real } = model.bench;
  const outside = end.faults.find(({ fault }) => fault === 'unlisted')?.probability ?? 0;
  const at = (one: Named): string => {
    const part = shareOf(one, end);
    return part === null
      ? path.outside({ cause: named(one), share: share(outside, system) })
      : path.one({ fault: named(one), share: share(part, system) });
  };
  const list = (causes: readonly Named[]): string => listOf(causes.map(at));
  return (
    <p>
      {judge(real, model.conclusion.value).verdict === 'solved'
        ? path.stood.both({ list: list(real) })
        : `${path.stood.yours({ list: list(yours) })} ${path.stood.real({ list: list(real) })}`}{' '}
      {Math.max(yours.length, real.length) > 1 && path.apart}
    </p>
  );
}

/** What the planner would have measured. */
export function PlannersWay({
  bench,
  planned: tests,
}: {
  readonly bench: BenchCase;
  readonly planned: readonly WayTest[];
}) {
  const system = useUnits();
  const { planner } = said;
  const minutes = tests.reduce((sum, one) => sum + one.minutes, 0);
  const isOutside = bench.causes.some(({ cause }) => listedAs(cause) === 'unlisted');
  return (
    <>
      <h4>{planner.title}</h4>
      <p>
        {planner.intro} {isOutside && planner.outside}
      </p>
      <ol class="case-planned">
        {tests.map(({ reading, top }) => (
          <li key={reading.test.id}>
            {words.known.read({
              test: nameOf(reading.test, system),
              value: shownIn(reading, system),
            })}
            .{' '}
            <span class="muted">
              {planner.top({
                fault: words.causes[top.fault],
                share: share(top.probability, system),
              })}
            </span>
          </li>
        ))}
      </ol>
      <p>
        {planner.sum({
          tests: plural(tests.length, planner.test),
          minutes: String(Math.round(minutes)),
        })}
      </p>
    </>
  );
}
