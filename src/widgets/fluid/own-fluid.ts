/**
 * A fluid by its two published numbers, as typed. The two are right only together, so they are
 * judged together: a text that cannot be taken stays where it was typed, with a sentence, while
 * the last good pair keeps its force.
 */
import { batch, computed, signal, type Signal } from '@preact/signals';
import { FLUID_LIMITS } from '../../engine/index.ts';
import { parseAmount } from '../../quantity/parse-amount.ts';
import { format, formatNumber } from '../../quantity/print.ts';
import { kinematicViscosity as cst } from '../../quantity/quantities.ts';
import { words } from './words.en.ts';

export type OwnKey = 'own40' | 'own100';
export interface OwnPair {
  readonly own40: number;
  readonly own100: number;
}

/** Where a data sheet gives each number of a fluid [°C]. */
export const OWN_TEMPS = { own40: 40, own100: 100, own15: 15 } as const;
const LIMITS = { own40: FLUID_LIMITS.kv40CSt, own100: FLUID_LIMITS.kv100CSt } as const;
// Kinematic viscosity reads the same in both unit systems.
const print = (value: number): string => format(value, cst, 'si');
const other = (key: OwnKey): OwnKey => (key === 'own40' ? 'own100' : 'own40');

/** Whether the two may stand together: every fluid thins as it warms. */
export const isPair = ({ own40, own100 }: OwnPair): boolean => own100 < own40;

export function ownFluid(inForce: { readonly [K in OwnKey]: Signal<number> }) {
  const typed = { own40: signal<string | null>(null), own100: signal<string | null>(null) };
  const judged = signal<OwnKey | null>(null);

  const read = (key: OwnKey) => {
    const text = typed[key].value;
    if (text === null) return { ok: true, value: inForce[key].value } as const;
    return parseAmount(text, cst, 'si', { ...LIMITS[key], example: inForce[key].value });
  };

  const problems = computed((): Readonly<Record<OwnKey, string>> => {
    const none = { own40: '', own100: '' };
    const last = judged.value;
    if (last === null) return none;
    const stands = words.refused.inForce({
      own40: print(inForce.own40.value),
      own100: print(inForce.own100.value),
    });
    const [cool, hot] = [read('own40'), read('own100')];
    if (!cool.ok || !hot.ok) {
      return {
        own40: cool.ok ? '' : `${cool.sentence} ${stands}`,
        own100: hot.ok ? '' : `${hot.sentence} ${stands}`,
      };
    }
    if (isPair({ own40: cool.value, own100: hot.value })) return none;
    const refused = words.refused[hot.value === cool.value ? 'same' : 'more'];
    const why = refused({ hot: print(hot.value), cool: print(cool.value) });
    return { ...none, [last]: `${why} ${stands}` };
  });

  /** Takes both texts up if they make a pair; else keeps them and says why. */
  const take = (key: OwnKey): void =>
    batch(() => {
      judged.value = key;
      const [cool, hot] = [read('own40'), read('own100')];
      if (!cool.ok || !hot.ok || !isPair({ own40: cool.value, own100: hot.value })) return;
      inForce.own40.value = cool.value;
      inForce.own100.value = hot.value;
      forget();
    });
  const forget = (): void => {
    typed.own40.value = null;
    typed.own100.value = null;
    judged.value = null;
  };

  return {
    typed,
    problems,
    take,
    /** What the field shows. */
    text: (key: OwnKey): string => typed[key].value ?? formatNumber(inForce[key].value, cst, 'si'),
    type: (key: OwnKey, text: string): void => {
      typed[key].value = text;
    },
    /** A pair from elsewhere: a task's start, a link. A bad one is shown as if typed, and refused. */
    put: (pair: OwnPair): void =>
      batch(() => {
        forget();
        if (isPair(pair)) {
          inForce.own40.value = pair.own40;
          inForce.own100.value = pair.own100;
          return;
        }
        typed.own40.value = formatNumber(pair.own40, cst, 'si');
        typed.own100.value = formatNumber(pair.own100, cst, 'si');
        judged.value = other('own40');
      }),
  };
}
export type OwnFluid = ReturnType<typeof ownFluid>;
