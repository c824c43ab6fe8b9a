/** Practice cases as this device remembers them: what was done on each car, and how it ended. */
import { keeper, type Area, type Keeper } from './envelope.ts';
import { isRecord, type Form } from './versioned.ts';

/** One car. Ids of steps, causes and repairs are the page's business; what it does not know it leaves out. */
export interface Visit {
  /** "ask:ranges", "look:idle", "test:codes", in the order done. */
  readonly steps: readonly string[];
  /** As chosen so far, or as handed in. */
  readonly causes: readonly string[];
  readonly repairs: readonly string[];
  /** Set when it was handed in. */
  readonly ended?: {
    readonly verdict: 'solved' | 'part' | 'wrong';
    readonly minutes: number;
  };
  /** Counts up with every change, so that the latest are kept where there are too many. */
  readonly serial: number;
}
export interface Visits {
  readonly byCase: Readonly<Record<string, Visit>>;
}

/** As many cars are remembered; the ones longest untouched go. */
export const MOST_VISITS = 120;

const isList = (value: unknown): value is string[] =>
  Array.isArray(value) && value.every((one) => typeof one === 'string');
const isCount = (value: unknown): value is number =>
  typeof value === 'number' && Number.isFinite(value) && value >= 0;

function parseEnded(value: unknown): Visit['ended'] | null {
  if (value === undefined) return undefined;
  if (!isRecord(value) || !isCount(value['minutes'])) return null;
  const { verdict, minutes } = value;
  return verdict === 'solved' || verdict === 'part' || verdict === 'wrong'
    ? { verdict, minutes }
    : null;
}

function parseVisit(value: unknown): Visit | undefined {
  if (!isRecord(value)) return undefined;
  const { steps, causes, repairs, serial } = value;
  const ended = parseEnded(value['ended']);
  if (!isList(steps) || !isList(causes) || !isList(repairs) || !isCount(serial)) return undefined;
  if (ended === null) return undefined;
  return { steps, causes, repairs, serial, ...(ended && { ended }) };
}

function parse(data: unknown): Visits | undefined {
  const byCase = isRecord(data) ? data['byCase'] : undefined;
  if (!isRecord(byCase)) return undefined;
  const read = Object.entries(byCase).map(([id, value]) => [id, parseVisit(value)] as const);
  if (read.some(([, visit]) => visit === undefined)) return undefined;
  return { byCase: Object.fromEntries(read) as Record<string, Visit> };
}

export const visitsForm: Form<Visits> = { name: 'visits', version: 1, parse };

export function visitKeeper(area?: Area): Keeper<Visits> {
  return keeper({ ...visitsForm, empty: { byCase: {} }, area });
}

/** With one car changed, and no more cars than are remembered. */
export function withVisit({ byCase }: Visits, id: string, visit: Omit<Visit, 'serial'>): Visits {
  const latest = Object.values(byCase).reduce((most, { serial }) => Math.max(most, serial), 0);
  const all = Object.entries({ ...byCase, [id]: { ...visit, serial: latest + 1 } });
  const kept = all.sort(([, a], [, b]) => b.serial - a.serial).slice(0, MOST_VISITS);
  return { byCase: Object.fromEntries(kept) };
}
