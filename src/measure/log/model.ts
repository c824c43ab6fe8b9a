import { signal } from '@preact/signals';
import type {
  ColumnChoice,
  Cut,
  FileTrouble,
  Layout,
  LogRange,
  LogUnit,
  Mapping,
  Ratios,
  Role,
} from '../../log/index.ts';
import { fits, guessColumns, guessRanges, headerKey } from '../../log/guess.ts';
import { UNITS } from '../../log/roles.ts';
import { logColumnsKeeper, withTool, type LogColumns } from '../../storage/log-columns.ts';
import type { Keeper } from '../../storage/envelope.ts';
import type { Answer, Ask, Opened, Read } from './messages.ts';

/** The training transmission, first and reverse: src/engine/transmission/transmissions.ts; a test holds them together. */
export const TRAINING: Ratios = { drive: 4, reverse: 3.4 };

export type State =
  | { readonly kind: 'none' }
  | { readonly kind: 'reading'; readonly share: number }
  | { readonly kind: 'cancelled' }
  | { readonly kind: 'refused'; readonly trouble: FileTrouble }
  | { readonly kind: 'failed' }
  | { readonly kind: 'open' };

/** A place in the log that a finding comes from. */
export interface Place {
  /** Time of the log [s]. */
  readonly at: number;
  /** The engagement it lies in, by its number from 0; null for one of its own. */
  readonly engagement: number | null;
}

export type RatioSource = 'training' | 'own' | 'log';

interface Works {
  readonly ask: (ask: Ask) => void;
  readonly stop: () => void;
}
type Start = (told: (answer: Answer) => void) => Promise<Works>;

/** A place alone is drawn with so much of the log on either side [s]. */
const ROUND = 3;

const isRole = (role: string): role is Role => Object.hasOwn(UNITS, role);

/** What was kept for a header, as a mapping; roles and units of another version of the site are left out. */
function remembered({ tools }: LogColumns, header: string): Mapping | undefined {
  const tool = tools.find((kept) => kept.header === header);
  if (tool === undefined) return undefined;
  const columns: Partial<Record<Role, ColumnChoice>> = {};
  for (const [role, { column, unit }] of Object.entries(tool.columns)) {
    if (!isRole(role)) continue;
    const known = (UNITS[role] as readonly string[]).find((one) => one === unit) as
      LogUnit | undefined;
    columns[role] = known === undefined ? { column } : { column, unit: known };
  }
  const ranges = Object.fromEntries(
    Object.entries(tool.ranges).filter(([, range]) =>
      ['park', 'reverse', 'neutral', 'drive'].includes(range),
    ),
  ) as Record<string, LogRange>;
  return { columns, ranges };
}

/** Everything the page knows of one log. */
export function makeLogReader(start: Start, keeper: Keeper<LogColumns> = logColumnsKeeper()) {
  const state = signal<State>({ kind: 'none' });
  const fileName = signal('');
  const opened = signal<Opened | null>(null);
  const mapping = signal<Mapping>({ columns: {}, ranges: {} });
  const fromMemory = signal(false);
  const notKept = signal(false);
  const read = signal<Read | null>(null);
  const source = signal<RatioSource>('training');
  const own = signal<Ratios>(TRAINING);
  const place = signal<Place | null>(null);
  const placeCut = signal<Cut | null>(null);
  let works: Works | undefined;
  let file: Blob | undefined;
  let turn = 0;

  const ratios = (): Ratios => {
    if (source.value === 'training') return TRAINING;
    if (source.value === 'own') return own.value;
    const gears = read.value?.log?.gears ?? [];
    const first = (range: 'drive' | 'reverse') => gears.find((gear) => gear.range === range)?.ratio;
    return {
      drive: first('drive') ?? TRAINING.drive,
      reverse: first('reverse') ?? TRAINING.reverse,
    };
  };

  const readAgain = (): void =>
    works?.ask({ kind: 'read', mapping: mapping.value, ratios: ratios() });

  function map(layout: Layout, sayings: Opened['sayings']): void {
    const kept = remembered(keeper.read().data, headerKey(layout.names, layout.units));
    fromMemory.value = kept !== undefined && fits(kept, layout.names.length);
    if (kept && fromMemory.value) {
      mapping.value = kept;
      return;
    }
    const columns = guessColumns(layout.names, layout.units);
    const range = columns.range?.column;
    mapping.value = {
      columns,
      ranges: range === undefined ? {} : guessRanges(sayings[range] ?? []),
    };
  }

  function told(answer: Answer): void {
    switch (answer.kind) {
      case 'progress':
        state.value = { kind: 'reading', share: answer.share };
        return;
      case 'refused':
        state.value = { kind: 'refused', trouble: answer.trouble };
        return;
      case 'failed':
        state.value = { kind: 'failed' };
        return;
      case 'opened':
        opened.value = answer;
        map(answer.layout, answer.sayings);
        state.value = { kind: 'open' };
        readAgain();
        return;
      case 'read': {
        read.value = answer;
        return;
      }
      case 'cut':
        placeCut.value = answer.cut;
    }
  }

  async function open(given: Partial<Pick<Layout, 'separator' | 'decimalMark'>>): Promise<void> {
    if (file === undefined) return;
    const blob = file;
    turn += 1;
    const mine = turn;
    works?.stop();
    works = undefined;
    place.value = null;
    placeCut.value = null;
    state.value = { kind: 'reading', share: 0 };
    const fresh = await start((answer) => {
      if (mine === turn) told(answer);
    });
    // Another file, or cancel, while the worker was fetched.
    if (mine !== turn) {
      fresh.stop();
      return;
    }
    works = fresh;
    fresh.ask({ kind: 'open', file: blob, given });
  }

  function keep(): void {
    const layout = opened.value?.layout;
    if (layout === undefined) return;
    const header = headerKey(layout.names, layout.units);
    const { columns, ranges } = mapping.value;
    const status = keeper.update((kept) => withTool(kept, { header, columns, ranges }));
    notKept.value = status !== 'ok';
  }

  function change(next: Mapping): void {
    mapping.value = next;
    fromMemory.value = false;
    place.value = null;
    keep();
    readAgain();
  }

  return {
    state,
    fileName,
    opened,
    mapping,
    fromMemory,
    notKept,
    read,
    source,
    own,
    place,
    placeCut,
    ratios,

    choose: (chosen: Blob, name: string): Promise<void> => {
      file = chosen;
      fileName.value = name;
      return open({});
    },
    layOut: (given: Partial<Pick<Layout, 'separator' | 'decimalMark'>>): Promise<void> =>
      open(given),
    cancel: (): void => {
      turn += 1;
      works?.stop();
      works = undefined;
      state.value = { kind: 'cancelled' };
    },
    /** A column for a role; null takes it away. */
    setColumn: (role: Role, column: number | null): void => {
      const { [role]: had, ...others } = mapping.value.columns;
      const said = opened.value?.layout.units[column ?? -1] ?? '';
      const [usual] = UNITS[role];
      const named = (UNITS[role] as readonly string[]).find((unit) => unit === said) as
        LogUnit | undefined;
      const unit = named ?? had?.unit ?? usual;
      const choice =
        column === null ? undefined : unit === undefined ? { column } : { column, unit };
      const ranges =
        role === 'range' && column !== null
          ? guessRanges(opened.value?.sayings[column] ?? [])
          : mapping.value.ranges;
      change({ columns: choice ? { ...others, [role]: choice } : others, ranges });
    },
    setUnit: (role: Role, unit: LogUnit): void => {
      const choice = mapping.value.columns[role];
      if (choice === undefined) return;
      const columns = { ...mapping.value.columns, [role]: { ...choice, unit } };
      change({ ...mapping.value, columns });
    },
    setRange: (saying: string, range: LogRange | null): void => {
      const others = Object.fromEntries(
        Object.entries(mapping.value.ranges).filter(([said]) => said !== saying),
      );
      change({
        ...mapping.value,
        ranges: range === null ? others : { ...others, [saying]: range },
      });
    },
    setRatios: (from: RatioSource, typed: Ratios = own.value): void => {
      own.value = typed;
      source.value = from;
      readAgain();
    },
    /** Shows the place that a finding comes from. */
    goTo: (to: Place): void => {
      place.value = to;
      if (to.engagement !== null) {
        placeCut.value = read.value?.cuts[to.engagement] ?? null;
        return;
      }
      placeCut.value = null;
      const { drive } = ratios();
      works?.ask({ kind: 'cut', from: to.at - ROUND, to: to.at + ROUND, zero: 0, ratio: drive });
    },
  };
}
export type LogReader = ReturnType<typeof makeLogReader>;
