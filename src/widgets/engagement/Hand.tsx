import { bisectCenter } from 'd3-array';
import { words as names } from '../../car/words.en.ts';
import { printer } from '../../quantity/print.ts';
import { pressure, seconds, speed } from '../../quantity/quantities.ts';
import type { UnitSystem } from '../../quantity/unit-system.ts';
import { Player } from '../../simulation/player/Player.tsx';
import { LiveText } from '../../ui/LiveText.tsx';
import { useUnits } from '../../ui/use-units.ts';
import { END, type EngagementModel, type Run } from './model.ts';
import { words as texts } from './words.en.ts';

const words = texts.player;

const reading = (run: Run, i: number, system: UnitSystem) => {
  const print = printer(system);
  return {
    turbine: print(run.speeds.turbine[i] ?? 0, speed),
    has: print(run.pressure[i] ?? 0, pressure),
  };
};

/** Goes through the seven seconds; the cursor of the chart is the handle for anything between. */
export function Hand({ model }: { readonly model: EngagementModel }) {
  const { cursor } = model;
  const system = useUnits();
  const at = cursor.value ?? 0;
  const i = bisectCenter(model.times, at);
  const hotEvent = model.hot.value.solved.events.findLast(({ time }) => time <= at + 1e-6);
  const cold = reading(model.cold.value, i, system);
  const hot = reading(model.hot.value, i, system);
  const moment = [
    words.reading({
      time: printer(system)(at, seconds),
      cold: cold.turbine,
      coldHas: cold.has,
      hot: hot.turbine,
      hotHas: hot.has,
    }),
    hotEvent ? words.last({ event: names.events[hotEvent.event] }) : words.nothing,
  ].join(' ');
  return (
    <div>
      <Player
        name={words.name}
        at={cursor}
        end={END}
        events={() => model.hot.peek().solved.events}
      />
      <LiveText text={moment} />
    </div>
  );
}
