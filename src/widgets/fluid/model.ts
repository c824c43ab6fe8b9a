import { batch, computed, type ReadonlySignal } from '@preact/signals';
import {
  EngineError,
  KINEMATIC_CST,
  fluidAt,
  fluidClasses,
  makeFluid,
  viscosityIndex,
} from '../../engine/index.ts';
import type { Fluid, FluidClass } from '../../engine/index.ts';
import { fluidName } from '../../simulation/choices/fluid-class.ts';
import { COOL_C, HOT_C, TEMPS } from '../../simulation/choices/temperatures.ts';
import { givensFrom } from '../../simulation/givens.ts';
import type { SimModel } from '../../simulation/sim-spec.ts';
import { ownFluid } from './own-fluid.ts';
import { words } from './words.en.ts';

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

/** Null below 2 cSt at 100 °C, where the standard does not define one. */
export const indexOf = ({ kv40CSt, kv100CSt }: Fluid): number | null =>
  kv100CSt < 2 ? null : viscosityIndex(kv40CSt, kv100CSt);

/** How many times thinner, by kinematic viscosity; below 1 it is thicker. */
const timesThinner = (from: Thickness | null, to: Thickness | null): number | null =>
  from && to ? from.kinematic / to.kinematic : null;

export function makeModel() {
  const { givens, apply: set } = givensFrom(START);
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
    const fluid = computed(() =>
      pick.value === 'own' ? typedFluid.value : makeFluid(fluidClasses[pick.value]),
    );
    const curve = computed(() => TEMPS.map((tempC) => thicknessAt(fluid.value, tempC)));
    const cool = computed(() => thicknessAt(fluid.value, COOL_C));
    const now = computed(() => thicknessAt(fluid.value, givens.temp.value));
    return {
      name: computed(() => (pick.value === 'own' ? words.own : fluidName(pick.value))),
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
      set(rest);
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
export type FluidModel = ReturnType<typeof makeModel>;
export type FluidSide = FluidModel['a'];
