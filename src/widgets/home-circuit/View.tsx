import { useSignal } from '@preact/signals';
import { useEffect, useMemo } from 'preact/hooks';
import { circuitFlows } from '../../car/circuit-flows.ts';
import { CircuitDrawing, circuitFrom, type CircuitState } from '../../drawings/index.ts';
import { hairs } from '../../quantity/hairs/hairs.ts';
import { printer } from '../../quantity/print.ts';
import { length, pressure, temperature } from '../../quantity/quantities.ts';
import type { UnitSystem } from '../../quantity/unit-system.ts';
import { CRACK, pulledTo } from '../../simulation/choices/number.ts';
import { LiveText } from '../../ui/LiveText.tsx';
import { Slider } from '../../ui/Slider.tsx';
import { useReady, useUnits } from '../../ui/use-units.ts';
import { makeModel, type HomeModel } from './model.ts';
import { words } from './words.en.ts';

/** From a cold morning to the hottest a transmission should ever get [°C]. */
const TEMP = { min: -10, max: 130, step: 1 };
function stateOf({ reading, holds, givens }: HomeModel, system: UnitSystem): CircuitState {
  const now = reading.value;
  return circuitFrom(
    {
      lineKpa: now.lineKpa,
      clutchKpa: now.clutches.forward.kPa,
      flows: circuitFlows(now, 'forward'),
      holds: holds.value,
      tempC: givens.temp.value,
      crackMm: givens.crack.value,
    },
    system,
  );
}

function says({ givens, reading, need, holds, letsGo }: HomeModel, system: UnitSystem): string {
  const print = printer(system);
  const now = words[holds.value ? 'held' : 'lost']({
    temp: print(givens.temp.value, temperature),
    has: print(reading.value.clutches.forward.kPa, pressure),
    need: print(need, pressure),
  });
  const crack = print(givens.crack.value, length);
  const edge = letsGo.value;
  if (givens.crack.value === 0) return `${now} ${words.edge.whole}`;
  if (edge.kind !== 'at') return `${now} ${words.edge[edge.kind]({ crack })}`;
  return `${now} ${words.edge.at({ crack, edge: print(edge.tempC, temperature) })}`;
}

interface Headline {
  readonly holds: string;
  readonly slips: string;
  readonly findOut: string;
}

/** The headline of the site, live: what holds cold slips hot, and the reader is the one who warms it. */
export function View({ headline }: { readonly headline: Headline }) {
  const model = useMemo(makeModel, []);
  const system = useUnits();
  const ready = useReady();
  const moved = useSignal(false);
  const { givens, holds } = model;
  useEffect(() => {
    const start = givens.temp.peek();
    return givens.temp.subscribe((temp) => {
      if (temp !== start) moved.value = true;
    });
  }, []);
  return (
    <section class="home-circuit" data-ready={ready} aria-label={words.name}>
      <h1 class={holds.value ? 'now-holds' : 'now-slips'}>
        <span class="holds">{headline.holds}</span>
        <span class="slips">
          <span>{headline.slips}</span>
        </span>
        <span class="why">{headline.findOut}</span>
      </h1>
      <div class="home-picture">
        <CircuitDrawing
          id="home-circuit-drawing"
          state={stateOf(model, system)}
          onCrack={moved.value ? pulledTo(givens.crack) : undefined}
        />
      </div>
      <div class="home-hand">
        <Slider
          id="home-temp"
          label={words.temp}
          value={givens.temp}
          quantity={temperature}
          {...TEMP}
        />
        <LiveText visible text={says(model, system)} />
        {/* The second handle comes after the first has been moved; its room is there before. */}
        <div class="home-second">
          {moved.value && (
            <Slider
              id="home-crack"
              label={words.crack}
              value={givens.crack}
              quantity={length}
              words={hairs}
              {...CRACK}
            />
          )}
        </div>
        <p class="muted">{words.invented}</p>
      </div>
    </section>
  );
}
