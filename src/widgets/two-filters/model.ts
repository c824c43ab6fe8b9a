import { computed } from '@preact/signals';
import { HOT_C } from '../../car/cold-and-hot.ts';
import { drawnThrough, fluidIn, pourSeconds, starvedBelow } from '../../car/filters.ts';
import { TEMPS } from '../../simulation/choices/temperatures.ts';
import { givensFrom } from '../../simulation/givens.ts';
import type { SimModel } from '../../simulation/sim-spec.ts';

export type Watched = 'pump' | 'pour';
export type FiltersGivens = {
  /** [°C] */
  temp: number;
  rpm: number;
  /** Media of the part of unknown origin, of the maker's [%]. */
  media: number;
  /** Media of the maker's part that dirt has left open [%]. */
  open: number;
  watch: Watched;
};
/** The two that lie on the bench. */
export const PARTS = ['maker', 'unknown'] as const;
export type Part = (typeof PARTS)[number];

export const FAST_RPM = 3000;
const START: FiltersGivens = { temp: HOT_C, rpm: FAST_RPM, media: 50, open: 100, watch: 'pump' };

const sharesOf = ({ open, media }: Pick<FiltersGivens, 'open' | 'media'>) => ({
  maker: open / 100,
  unknown: media / 100,
});
function each<T>(make: (part: Part) => T): Record<Part, T> {
  return { maker: make('maker'), unknown: make('unknown') };
}

/** Both filters at one temperature and speed, under the pump and in the pour. */
export function filtersAt(state: Partial<FiltersGivens>) {
  const { temp, rpm, ...rest } = { ...START, ...state };
  const shares = sharesOf(rest);
  const fluid = fluidIn(temp);
  return each((part) => ({
    ...drawnThrough({ media: shares[part], engineRpm: rpm }, fluid),
    pour: pourSeconds(shares[part], fluid),
  }));
}

export function makeModel() {
  const { givens, apply, reset } = givensFrom(START);
  const fluids = computed(() => TEMPS.map(fluidIn));
  const shares = computed(() => sharesOf({ open: givens.open.value, media: givens.media.value }));
  const curvesOf = (make: (part: Part, fluid: ReturnType<typeof fluidIn>) => number) =>
    computed(() => each((part) => fluids.value.map((fluid) => make(part, fluid))));
  const drawn = (part: Part) => ({ media: shares.value[part], engineRpm: givens.rpm.value });
  return {
    givens,
    apply,
    reset,
    now: computed(() =>
      filtersAt({
        temp: givens.temp.value,
        rpm: givens.rpm.value,
        media: givens.media.value,
        open: givens.open.value,
      }),
    ),
    lost: curvesOf((part, fluid) => drawnThrough(drawn(part), fluid).lostKpa),
    got: curvesOf((part, fluid) => 100 * drawnThrough(drawn(part), fluid).share),
    pours: curvesOf((part, fluid) => pourSeconds(shares.value[part], fluid)),
    starved: computed(() => each((part) => starvedBelow(drawn(part)))),
  } satisfies SimModel<FiltersGivens> & Record<string, unknown>;
}
export type FiltersModel = ReturnType<typeof makeModel>;
