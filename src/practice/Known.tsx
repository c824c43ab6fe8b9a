import type { Step } from '../cases/visit.ts';
import { testOf } from '../diagnosis/index.ts';
import { nameOf, shownIn } from '../planner/reading-text.ts';
import type { UnitSystem } from '../quantity/unit-system.ts';
import { useUnits } from '../ui/use-units.ts';
import { lookedLike } from './Looks.tsx';
import type { CaseModel } from './model.ts';
import { words } from './words.en.ts';

/** What a step has told, as one line. */
export function lineOf(model: CaseModel, step: Step, system: UnitSystem): string {
  const { read } = words.known;
  switch (step.kind) {
    case 'ask':
      return read({ test: words.questions[step.what], value: model.bench.asked[step.what] });
    case 'look':
      return read({ test: words.looks[step.what].name, value: lookedLike(model, step.what) });
    case 'test': {
      const test = testOf(step.what);
      return read({ test: nameOf(test, system), value: shownIn(model.bench.read(test), system) });
    }
  }
}

/** Everything that is known of the car, latest first: what was just read is in sight. */
export function Known({ model }: { readonly model: CaseModel }) {
  const system = useUnits();
  const { known } = words;
  const steps = model.steps.value.filter(({ kind }) => kind !== 'ask');
  return (
    <section class="case-part" aria-label={known.title}>
      <h3>{known.title}</h3>
      {steps.length === 0 ? (
        <p class="muted">{known.none}</p>
      ) : (
        <ol class="case-known" reversed>
          {[...steps].reverse().map((step) => (
            <li key={step.what}>{lineOf(model, step, system)}</li>
          ))}
        </ol>
      )}
    </section>
  );
}
