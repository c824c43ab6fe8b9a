import { batch, type Signal } from '@preact/signals';
import type { Readings } from '../../car/complaint-readings.ts';
import { simulationView, type PictureProps } from '../../simulation/simulation-view.tsx';
import { Choice } from '../../ui/Choice.tsx';
import { Checks } from './Checks.tsx';
import { Lines } from './Lines.tsx';
import { makeModel, type ThreeChecksModel } from './model.ts';
import { complaintName } from './print.ts';
import { bringReadings } from './readings.ts';
import { sim } from './sim.ts';

/** The complaint, and which of its causes are left for the minutes spent. */
function Picture({ model }: PictureProps<ThreeChecksModel>) {
  return (
    <figure class="three-checks">
      <figcaption>{complaintName(model.givens.complaint.value)}</figcaption>
      <Lines model={model} />
    </figure>
  );
}

/** A given that takes no check along: another complaint or car begins with none taken. */
function afresh({ givens }: ThreeChecksModel, key: 'complaint' | 'car'): Signal<string> {
  const given = givens[key] as Signal<string>;
  const begun = {
    get value() {
      return given.value;
    },
    set value(next: string) {
      if (next === given.peek()) return;
      batch(() => {
        given.value = next;
        givens.taken.value = 0;
      });
    },
  };
  return begun as Signal<string>;
}

function pick(model: ThreeChecksModel, key: 'complaint' | 'car') {
  const control = sim.controls.find((one) => one.key === key);
  const value = afresh(model, key);
  return (id: string) =>
    control?.kind === 'choice' ? (
      <Choice id={id} label={control.label} value={value} options={control.options} as="select" />
    ) : null;
}

const Simulation = simulationView({
  sim,
  tasks: () => import('./tasks.ts'),
  makeModel,
  Picture,
  below: () => import('./Below.tsx'),
  drawn: (model) => ({
    complaint: pick(model, 'complaint'),
    car: pick(model, 'car'),
    taken: (id: string) => <Checks id={id} model={model} />,
  }),
});

/** What the model reads was solved when the page was built, and comes with the island. */
export function View({ readings }: { readonly readings: Readings }) {
  bringReadings(readings);
  return <Simulation />;
}
