import { batch, computed, signal, type ReadonlySignal } from '@preact/signals';
import {
  EngineError,
  FLUID_TEMP_C,
  KINEMATIC_CST,
  fluidAt,
  fluidClasses,
  makeFluid,
  viscosityIndex,
} from '../../engine/index.ts';
import type { Fluid, FluidClass } from '../../engine/index.ts';
import type { SimModel } from '../../simulation/sim-spec.ts';
import { ownFluid } from './own-fluid.ts';

export type FluidPick = FluidClass | 'own';
export type FluidGivens = {
  temp: number;
  fluidA: FluidPick;
  fluidB: FluidPick;
  own40: number;
  own100: number;
  own15: number;
  log: boolean;
};

/** Taken for a fluid whose data sheet does not say; the middle of the three classes. */
export const DEFAULT_DENSITY = fluidClasses['low-viscosity'].density15;
const START: FluidGivens = {
  temp: 20,
  fluidA: 'low-viscosity',
  fluidB: 'standard',
  own40: 32,
  own100: 5.4,
  own15: DEFAULT_DENSITY,
  log: false,
};

export const FLUID_NAMES: Readonly<Record<FluidPick, string>> = {
  'low-viscosity': 'Low-viscosity',
  standard: 'Standard',
  'ultra-low': 'Ultra-low',
  own: 'Your own',
};
export const COOL_C = 20;
export const HOT_C = 100;
/** Every two degrees: finer than a phone can show, and -30, 20 and 100 are among them. */
export const TEMPS: readonly number[] = Array.from(
  { length: (FLUID_TEMP_C.max - FLUID_TEMP_C.min) / 2 + 1 },
  (_, i) => FLUID_TEMP_C.min + 2 * i,
);

export interface Thickness {
  /** cSt */
  readonly kinematic: number;
  /** mPa·s */
  readonly dynamic: number;
  /** kg/m3 */
  readonly density: number;
}

/**
 * Null where a typed pair carries the law out of its range (the engine refuses, or the value falls
 * below what the law is meant for): better no line than a made-up one.
 */
export function thicknessAt(fluid: Fluid, tempC: number): Thickness | null {
  try {
    const { kinematic, dynamic, density } = fluidAt(fluid, tempC);
    const cSt = kinematic * 1e6;
    if (!(cSt >= KINEMATIC_CST.min && cSt <= KINEMATIC_CST.max)) return null;
    return { kinematic: cSt, dynamic: dynamic * 1e3, density };
  } catch (refusal) {
    if (refusal instanceof EngineError) return null;
    throw refusal;
  }
}

const classes = {
  standard: makeFluid(fluidClasses.standard),
  'low-viscosity': makeFluid(fluidClasses['low-viscosity']),
  'ultra-low': makeFluid(fluidClasses['ultra-low']),
} as const;

/** Null below 2 cSt at 100 °C, where the standard does not define one. */
export const indexOf = ({ kv40CSt, kv100CSt }: Fluid): number | null =>
  kv100CSt < 2 ? null : viscosityIndex(kv40CSt, kv100CSt);

/** How many times thinner, by kinematic viscosity; below 1 it is thicker. */
const timesThinner = (from: Thickness | null, to: Thickness | null): number | null =>
  from && to ? from.kinematic / to.kinematic : null;

export function makeFluidModel() {
  const givens = {
    temp: signal(START.temp),
    fluidA: signal(START.fluidA),
    fluidB: signal(START.fluidB),
    own40: signal(START.own40),
    own100: signal(START.own100),
    own15: signal(START.own15),
    log: signal(START.log),
  };
  const own = ownFluid(givens);
  const typedFluid = computed(() =>
    makeFluid({
      kv40CSt: givens.own40.value,
      kv100CSt: givens.own100.value,
      density15: givens.own15.value,
    }),
  );

  /** One of the two fluids. The curve is made anew only when the fluid changes, not the temperature. */
  const side = (pick: ReadonlySignal<FluidPick>) => {
    const fluid = computed(() => (pick.value === 'own' ? typedFluid.value : classes[pick.value]));
    const curve = computed(() => TEMPS.map((tempC) => thicknessAt(fluid.value, tempC)));
    const cool = computed(() => thicknessAt(fluid.value, COOL_C));
    const now = computed(() => thicknessAt(fluid.value, givens.temp.value));
    return {
      name: computed(() => FLUID_NAMES[pick.value]),
      fluid,
      curve,
      now,
      cool,
      hot: computed(() => thicknessAt(fluid.value, HOT_C)),
      index: computed(() => indexOf(fluid.value)),
      times: computed(() => timesThinner(cool.value, now.value)),
    };
  };

  const apply = ({ own40, own100, ...rest }: Partial<FluidGivens>): void =>
    batch(() => {
      for (const [key, value] of Object.entries(rest)) {
        (givens[key as keyof FluidGivens] as { value: unknown }).value = value;
      }
      if (own40 === undefined && own100 === undefined) return;
      own.put({
        own40: own40 ?? givens.own40.peek(),
        own100: own100 ?? givens.own100.peek(),
      });
    });

  return {
    givens,
    own,
    ownIndex: computed(() => indexOf(typedFluid.value)),
    a: side(givens.fluidA),
    b: side(givens.fluidB),
    apply,
    reset: () => apply(START),
  } satisfies SimModel<FluidGivens> & Record<string, unknown>;
}
export type FluidModel = ReturnType<typeof makeFluidModel>;
export type FluidSide = FluidModel['a'];
