import type { On } from '../cases/made-key.ts';
import type { CarState, TakenReading, Test } from '../diagnosis/index.ts';
import type { Answer, Ask, Listed, Proposal, WayTest } from '../planner/messages.ts';
import { think } from '../planner/thinker.ts';
import type { Working } from '../ui/page-worker.ts';

const tables: Readonly<Record<On, () => Promise<string>>> = {
  training: () => import('../diagnosis/kept-table.ts').then(({ keptTable }) => keptTable),
  second: () =>
    import('../diagnosis/kept-second-table.ts').then(({ keptSecondTable }) => keptSecondTable),
};
/** The table of a transmission, fetched when a case is on it. */
export const loadTable = (on: On): Promise<string> => tables[on]();

const TURN = 1;

/** Asks once, and ends what thinks when it has said what was wanted. */
function once<Said>(
  ask: Exclude<Ask, { kind: 'read' }>,
  hear: (answer: Answer, works: Working<Ask>) => Said | undefined,
): Promise<Said> {
  return new Promise((said, failed) => {
    const works = think((answer) => {
      const heard = hear(answer, works);
      if (heard === undefined && answer.kind !== 'lost' && answer.kind !== 'noTable') return;
      works.stop();
      if (heard === undefined) failed(new Error('The planner did not come.'));
      else said(heard);
    });
    works.ask(ask);
  });
}

interface Car {
  readonly on: On;
  readonly readings: readonly TakenReading[];
  readonly state: CarState;
}
const asking = async ({ on, readings, state }: Car): Promise<Ask & { kind: 'think' }> => ({
  kind: 'think',
  turn: TURN,
  asked: { table: await loadTable(on), readings, after: [], state },
});

/** How the list stands, and whether one fault fits. */
export const listFor = async (car: Car): Promise<Listed> => {
  let listed: Listed | undefined;
  return once(await asking(car), (answer) => {
    if (answer.kind === 'listed') ({ listed } = answer);
    return answer.kind === 'fits' && listed ? { ...listed, fit: answer.fit } : undefined;
  });
};
/** What the planner would measure next. */
export const nextFor = async (car: Car): Promise<readonly Proposal[]> =>
  once(await asking(car), (answer) => (answer.kind === 'ranked' ? answer.next : undefined));

/** So many tests of the planner's way are shown at most. */
const MOST_TESTS = 20;

/** The way that the planner takes on a car, which is read where it stands. */
export const wayOn = async (
  on: On,
  state: CarState,
  read: (test: Test) => TakenReading,
): Promise<readonly WayTest[]> =>
  once(
    { kind: 'way', turn: TURN, table: await loadTable(on), state, most: MOST_TESTS },
    (answer, works) => {
      if (answer.kind === 'wants') {
        works.ask({ kind: 'read', turn: TURN, reading: read(answer.test) });
      }
      return answer.kind === 'way' ? answer.tests : undefined;
    },
  );
