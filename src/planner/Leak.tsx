import { useSignal } from '@preact/signals';
import type { LeakEstimate } from '../diagnosis/index.ts';
import type { LeakMap } from './LeakMap.tsx';
import { dimension } from '../quantity/part-quantities.ts';
import { printer } from '../quantity/print.ts';
import { flow, length } from '../quantity/quantities.ts';
import { useUnits } from '../ui/use-units.ts';
import { training, type Circuit, type Plant } from '../engine/index.ts';
import { FromYours } from './FromYours.tsx';
import type { PlannerModel } from './model.ts';
import { words as said } from './leak-words.en.ts';

/** From this share of the seal on, and from this many pressures of its two clutches, its crack is worth a figure. */
const FROM = 0.2;
const LEAST = 2;

/** Whether a tap sits behind the transfer seal. */
const isSealed = (circuit: string | undefined, { leaks }: Plant): boolean =>
  leaks[circuit as Circuit].transferSeal.width > 0;

/** The size of the crack, worked out when asked for: it takes half a second. */
export function Leak({ model }: { readonly model: PlannerModel }) {
  const system = useUnits();
  const print = printer(system);
  const found = useSignal<{
    readonly of: unknown;
    readonly on: unknown;
    readonly leak: LeakEstimate | null;
  } | null>(null);
  const drawn = useSignal<typeof LeakMap | null>(null);
  const failed = useSignal(false);
  const readings = model.readings.value;
  const seal = model.advice.value?.faults.find(({ fault }) => fault === 'transferSeal');
  const plant = model.basis.value?.plant ?? training;
  const pressures = readings.filter(
    ({ test: { kind, at } }) => kind === 'clutchPressure' && isSealed(at.circuit, plant),
  ).length;
  if ((seal?.probability ?? 0) < FROM || pressures < LEAST) return null;
  const ask = () => {
    import('./load-leak.ts').then(
      ({ leakOf, LeakMap: map }) => {
        drawn.value = map;
        found.value = { of: readings, on: plant, leak: leakOf(readings, plant) };
      },
      () => {
        failed.value = true;
      },
    );
  };
  // Of other readings than those that stand there now it would be a figure of yesterday.
  const leak = found.value?.of === readings && found.value.on === plant ? found.value.leak : null;
  const Drawn = drawn.value;
  const mm = (value: number): string => print(value, length);
  return (
    <section class="next-leak" aria-label={said.title}>
      <h3>{said.title}</h3>
      <FromYours model={model} />
      {leak === null ? (
        <button type="button" class="quiet" onClick={ask}>
          {said.ask}
        </button>
      ) : (
        <>
          <p role="status">
            {leak.apart
              ? said.size({
                  low: mm(leak.heightMm[0]),
                  middle: mm(leak.heightMm[1]),
                  high: mm(leak.heightMm[2]),
                  widthLow: print(leak.widthMm[0], dimension),
                  widthHigh: print(leak.widthMm[2], dimension),
                })
              : said.notApart({ low: mm(leak.heightMm[0]), high: mm(leak.heightMm[2]) })}{' '}
            {said.loses({
              low: print(leak.leakLmin[0], flow),
              high: print(leak.leakLmin[2], flow),
            })}{' '}
            {leak.helps !== null && said.helps[leak.helps]}
          </p>
          {Drawn && <Drawn leak={leak} />}
        </>
      )}
      {failed.value && <p role="status">{said.failed}</p>}
    </section>
  );
}
