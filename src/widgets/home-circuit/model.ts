import { computed } from '@preact/signals';
import { makeCar, REFERENCE_CRACK_MM } from '../../car/car.ts';
import { COLD_C } from '../../car/cold-and-hot.ts';
import { letsGo } from '../../car/lets-go.ts';
import { needOf } from '../../car/need.ts';
import { readingOf } from '../../car/readings.ts';
import { givensFrom } from '../../simulation/givens.ts';

/** What the headline is about: pulling away gently, on the crack that the course follows. */
const DEMAND = 'gentle';

export function makeModel() {
  const { givens } = givensFrom({ temp: COLD_C, crack: REFERENCE_CRACK_MM });
  const car = computed(() => makeCar({ crackMm: givens.crack.value }));
  const reading = computed(() => readingOf(car.value, { tempC: givens.temp.value }));
  const need = needOf(DEMAND).kPa;
  return {
    givens,
    reading,
    need,
    holds: computed(() => reading.value.clutches.forward.kPa >= need),
    letsGo: computed(() => letsGo(car.value, DEMAND)),
  };
}
export type HomeModel = ReturnType<typeof makeModel>;
