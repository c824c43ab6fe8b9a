/** The state of the page. Address, network and chance are handed in, so it runs in Node. */
import { signal } from '@preact/signals';
import type { UnitSystem } from '../quantity/unit-system.ts';
import type { Sheets } from '../quiz/on-paper/sheets.ts';
import { readAddress, searchOf, type Shown } from './address.ts';
import {
  lessonsOf,
  readChoice,
  type Area,
  type Choice,
  type Faults,
  type Typed,
} from './choice.ts';
import type { draw, Drawn } from './draw.ts';

type Miss = Extract<Drawn, { miss: unknown }>['miss'];

export interface Made {
  readonly choice: Choice;
  readonly sheets: Sheets;
  readonly version: string;
}
export interface Surroundings {
  readonly areas: readonly Area[];
  readonly search: string;
  readonly units: UnitSystem;
  /** What fetches questions and draws sheets; rejects if it cannot be had. */
  readonly loadDrawer: () => Promise<typeof draw>;
  /** The folder that the site stands in. */
  readonly base: string;
  /** Puts the choice into the address. */
  readonly write: (search: string) => void;
  /** A seed that nobody had to think of. */
  readonly drawSeed: () => string;
}

/** What most people want who print one for the first time. */
const COUNT = '20';

export function sheetModel(around: Surroundings) {
  const { areas } = around;
  const asked = readAddress(around.search, areas, around.units);
  const typed = signal<Typed>(
    asked?.typed ?? {
      lessons: new Set(lessonsOf(areas).map(({ id }) => id)),
      count: COUNT,
      units: around.units,
      seed: around.drawSeed(),
      version: '',
    },
  );
  const faults = signal<Faults>({});
  const made = signal<Made | undefined>(undefined);
  const shown = signal<Shown>(asked?.shown ?? 'a');
  const miss = signal<Miss | undefined>(undefined);
  const loading = signal(false);

  const set = (change: Partial<Typed>): void => {
    typed.value = { ...typed.peek(), ...change };
  };

  /** False if something that was typed cannot be taken, or the questions did not come; it is said then. */
  async function make(): Promise<boolean> {
    const choice = readChoice(typed.peek(), areas);
    faults.value = 'faults' in choice ? choice.faults : {};
    if ('faults' in choice) return false;
    miss.value = undefined;
    loading.value = true;
    const draw = await around.loadDrawer().catch(() => undefined);
    const drawn: Drawn = await (draw?.(around.base, choice) ?? { miss: 'stuck' as const });
    loading.value = false;
    if ('miss' in drawn) {
      miss.value = drawn.miss;
      return false;
    }
    made.value = { choice, ...drawn };
    write();
    return true;
  }

  function write(): void {
    const now = made.peek();
    // What was asked for stays, so that a reload says again what has changed since.
    if (now !== undefined)
      around.write(searchOf(now.choice, now.choice.version || now.version, shown.peek()));
  }

  return {
    ...{ areas, typed, faults, made, shown, miss, loading, set, make },
    /** The address of what shows, as it was drawn now. */
    link: ({ choice, version }: Made): string => searchOf(choice, version, shown.peek()),
    /** Whether the page was opened by a link to a sheet. */
    linked: asked !== undefined,
    gone: asked?.gone ?? [],
    drawSeed: (): void => set({ seed: around.drawSeed(), version: '' }),
    tick: (ids: readonly string[], on: boolean): void => {
      const lessons = new Set(typed.peek().lessons);
      for (const id of ids) {
        if (on) lessons.add(id);
        else lessons.delete(id);
      }
      set({ lessons });
    },
    show: (one: Shown): void => {
      shown.value = one;
      write();
    },
  };
}

export type SheetModel = ReturnType<typeof sheetModel>;
