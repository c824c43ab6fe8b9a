import {
  contradictionFinder,
  decodeTable,
  expectedOf,
  FEW,
  findingsOf,
  fitOf,
  groundsOf,
  hypothesesOf,
  isNumeric,
  outcomesFor,
  rankSteps,
  stepsOf,
  twoFaultSteps,
  walkOf,
  weigh,
  withPlain,
  type Hypothesis,
  type Posterior,
  type Ranked,
  type TakenReading,
  type TwoFaults,
} from '../diagnosis/index.ts';
import type { Working } from '../ui/page-worker.ts';
import type { Answer, Ask, Asked, Proposal, WayTest } from './messages.ts';

/** One table, made ready once. */
interface Ready {
  readonly table: string;
  readonly hypotheses: readonly Hypothesis[];
  readonly clashes: ReturnType<typeof contradictionFinder>;
  told: boolean;
}
/** Piece by piece; nothing, where a breath may be taken. A piece that wants a reading is given it. */
type Pieces = Generator<Answer | undefined, void, TakenReading | undefined>;

/** How many of the likeliest causes a test is said to tell apart. */
const APART = 3;

function proposalOf(posterior: Posterior, { test, bits, minutes }: Ranked): Proposal {
  const expects = isNumeric(test)
    ? findingsOf(posterior)
        .filter(({ fault }) => fault !== 'unlisted')
        .slice(0, APART)
        .map(({ fault }) => ({ fault, value: expectedOf(posterior, test, fault) }))
    : [];
  return { test, bits, minutes, expects };
}

/** More of them nobody reads. */
const PAIRS = 3;
const likeliest = ({ odds, pairs }: TwoFaults): TwoFaults => ({
  odds,
  pairs: pairs.slice(0, PAIRS),
});

function* thoughts(ready: Ready, turn: number, asked: Asked): Pieces {
  const { readings, after, state } = asked;
  const posterior = weigh(ready.hypotheses, readings);
  yield;
  const steps = stepsOf(posterior, readings);
  yield {
    kind: 'listed',
    turn,
    listed: { faults: findingsOf(posterior), fit: fitOf(posterior), steps },
    ...(!ready.told && { grounds: groundsOf(ready.hypotheses) }),
  };
  ready.told = true;
  const next: Proposal[] = [];
  for (const ranked of yield* rankSteps(posterior, state)) {
    next.push(proposalOf(posterior, ranked));
    yield;
  }
  const [best] = next;
  const outcomes = best === undefined ? [] : outcomesFor(posterior, best.test);
  yield { kind: 'ranked', turn, next, outcomes };
  const clashing = {
    before: withPlain(yield* ready.clashes(readings), readings),
    after: withPlain(yield* ready.clashes(after), after),
  };
  yield { kind: 'clashing', turn, clashing };
  const two =
    posterior.numbers < FEW ? null : yield* twoFaultSteps(ready.hypotheses, posterior, readings);
  yield { kind: 'fits', turn, fit: fitOf(posterior, two ?? undefined), two: two && likeliest(two) };
}

function* way({ hypotheses }: Ready, { turn, state, most }: Ask & { kind: 'way' }): Pieces {
  const walk = walkOf(hypotheses, { state });
  const tests: WayTest[] = [];
  let step = walk.next();
  while (step.done !== true && tests.length < most) {
    const { last, faults, wants } = step.value;
    const [top] = faults;
    if (last && top) tests.push({ ...last, top });
    if (wants === undefined) break;
    const reading = yield { kind: 'wants', turn, test: wants };
    if (reading === undefined) return;
    step = walk.next(reading);
  }
  yield { kind: 'way', turn, tests };
}

/**
 * What thinks, in a worker or on a page: in slices of so many milliseconds, so that a later question is heard in between and
 * ends the one before it.
 */
export function thinking(tell: (answer: Answer) => void, sliceMs: number): Working<Ask> {
  let ready: Ready | undefined;
  let pieces: Pieces | undefined;
  let turn = 0;
  let timer: ReturnType<typeof setTimeout> | undefined;

  function readyFor(table: string): Ready {
    if (ready?.table === table) return ready;
    const hypotheses = hypothesesOf(decodeTable(table));
    ready = { table, hypotheses, clashes: contradictionFinder(hypotheses), told: false };
    return ready;
  }
  const piecesOf = function* (ask: Exclude<Ask, { kind: 'read' }>): Pieces {
    let on: Ready;
    try {
      on = readyFor(ask.kind === 'think' ? ask.asked.table : ask.table);
    } catch {
      yield { kind: 'noTable', turn: ask.turn };
      return;
    }
    yield;
    yield* ask.kind === 'think' ? thoughts(on, ask.turn, ask.asked) : way(on, ask);
  };
  function slice(given?: TakenReading): void {
    const until = performance.now() + sliceMs;
    let reading = given;
    do {
      const step = pieces?.next(reading);
      reading = undefined;
      if (step === undefined || step.done === true) return;
      if (step.value === undefined) continue;
      tell(step.value);
      // It goes on once it has been read.
      if (step.value.kind === 'wants') return;
    } while (performance.now() < until);
    timer = setTimeout(slice);
  }
  return {
    ask: (ask) => {
      if (ask.kind === 'read') {
        if (ask.turn === turn) timer = setTimeout(slice, 0, ask.reading);
        return;
      }
      clearTimeout(timer);
      turn = ask.turn;
      pieces = piecesOf(ask);
      timer = setTimeout(slice);
    },
    stop: () => clearTimeout(timer),
  };
}
