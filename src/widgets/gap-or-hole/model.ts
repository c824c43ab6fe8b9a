import { computed } from '@preact/signals';
import {
  FLUID_TEMP_C,
  GAP_REYNOLDS_LIMIT,
  findRoot,
  fluidAt,
  fluidClasses,
  gapFlow,
  training,
  holeArea,
  holeFlow,
  litresPerMinute,
  makeFluid,
} from '../../engine/index.ts';
import type { FluidClass, FluidState } from '../../engine/index.ts';
import { COOL_C, HOT_C, TEMPS } from '../../simulation/choices/temperatures.ts';
import { givensFrom } from '../../simulation/givens.ts';
import type { SimModel } from '../../simulation/sim-spec.ts';

export type GapOrHoleGivens = {
  temp: number;
  /** mm */
  height: number;
  /** kPa */
  pressure: number;
  fluid: FluidClass;
};
const START: GapOrHoleGivens = { temp: 20, height: 0.07, pressure: 400, fluid: 'low-viscosity' };

/** Wide enough for the widest crack at the highest pressure; m. */
const WIDEST_HOLE = 5e-3;

/** The split transfer seal of the training transmission: 14 mm wide, 3 mm through. */
const { width, length } = training.leaks.forward.transferSeal;

export function makeModel() {
  const { givens, apply, reset } = givensFrom(START);
  const fluid = computed(() => makeFluid(fluidClasses[givens.fluid.value]));
  const states = computed(() => TEMPS.map((tempC) => fluidAt(fluid.value, tempC)));
  const cool = computed(() => fluidAt(fluid.value, COOL_C));
  const hot = computed(() => fluidAt(fluid.value, HOT_C));
  const now = computed(() => fluidAt(fluid.value, givens.temp.value));

  const crackIn = (state: FluidState) =>
    gapFlow(
      { width, height: givens.height.value / 1e3, length },
      givens.pressure.value * 1e3,
      state,
    );
  const holeIn = (diameter: number, { density, kinematic }: FluidState): number =>
    holeFlow(holeArea(diameter), givens.pressure.value * 1e3, density, kinematic);

  /** The drill that leaks what the crack leaks at 20 °C; m. */
  const drill = computed(() => {
    const wanted = crackIn(cool.value).flow;
    return findRoot((diameter) => holeIn(diameter, cool.value) - wanted, 0, WIDEST_HOLE);
  });
  const holeAt = (state: FluidState): number => holeIn(drill.value.root, state);

  const curves = computed(() => {
    const crack = states.value.map(crackIn);
    return {
      crack: crack.map(({ flow }) => litresPerMinute(flow)),
      hole: states.value.map((state) => litresPerMinute(holeAt(state))),
      rubbing: crack.map(({ viscousShare }) => 100 * viscousShare),
    };
  });
  const crackNow = computed(() => crackIn(now.value));

  /** The temperature above which the laminar law is out of its range; null when there is none on offer. */
  const lawEndsAt = computed(() => {
    const over = (tempC: number): number =>
      crackIn(fluidAt(fluid.value, tempC)).reynolds - GAP_REYNOLDS_LIMIT;
    const { root, converged } = findRoot(over, FLUID_TEMP_C.min, FLUID_TEMP_C.max);
    return converged ? root : null;
  });

  return {
    givens,
    curves,
    drill,
    /** mm */
    holeMm: computed(() => drill.value.root * 1e3),
    /** L/min, share and Reynolds number at the temperature set. */
    crack: computed(() => {
      const { flow, reynolds, viscousShare, laminarLawValid } = crackNow.value;
      return { leak: litresPerMinute(flow), reynolds, viscousShare, laminarLawValid };
    }),
    hole: computed(() => litresPerMinute(holeAt(now.value))),
    /** How many times what they leak at 20 °C they leak at 100 °C. */
    growth: computed(() => {
      const start = crackIn(cool.value).flow;
      return { crack: crackIn(hot.value).flow / start, hole: holeAt(hot.value) / start };
    }),
    lawEndsAt,
    apply,
    reset,
  } satisfies SimModel<GapOrHoleGivens> & Record<string, unknown>;
}
export type GapOrHoleModel = ReturnType<typeof makeModel>;
