import { simulationView, type PictureProps } from '../../simulation/simulation-view.tsx';
import { bringCars } from './cars.ts';
import { Dial } from './Dial.tsx';
import { makeModel, type GaugeModel } from './model.ts';
import { placeAt, PLACES } from './places.ts';
import { whenOf } from './print.ts';
import { Row } from './Row.tsx';
import { sim } from './sim.ts';
import { words } from './words.en.ts';

/** Where the gauge is, and what it shows beside the command. */
function Picture({ model }: PictureProps<GaugeModel>) {
  const now = model.shown.value;
  return (
    <figure class="gauge-picture">
      <figcaption>
        {now === null
          ? words.gauge.nothing
          : words.gauge.set({ place: words.places[placeAt(now)], when: whenOf(now) })}
      </figcaption>
      <Dial model={model} />
    </figure>
  );
}

const Simulation = simulationView({
  sim,
  tasks: () => import('./tasks.ts'),
  makeModel,
  Picture,
  below: () => import('./Below.tsx'),
  drawn: (model) =>
    Object.fromEntries(
      PLACES.map((place) => [place, (id: string) => <Row {...{ id, place, model }} />]),
    ),
});

/** The cars were solved when the page was built, and come with the island. */
export function View({ cars }: { readonly cars: string }) {
  bringCars(cars);
  return <Simulation />;
}
