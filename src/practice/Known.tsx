import type { Step } from '../cases/visit.ts';
import { testOf } from '../diagnosis/index.ts';
import { nameOf, shownIn } from '../planner/reading-text.ts';
import type { UnitSystem } from '../quantity/unit-system.ts';
import { More } from '../ui/More.tsx';
import { useUnits } from '../ui/use-units.ts';
import { lookedLike } from './Looks.tsx';
import type { CaseModel } from './model.ts';
import { words } from './words.en.ts';

/** What a step has told, as one line. */
export function lineOf(model: CaseModel, step: Step, system: UnitSystem): string {
  const { asked, read } = words.known;
  switch (step.kind) {
    case 'ask':
      return asked({ question: words.questions[step.what], answer: model.bench.asked[step.what] });
    case 'look':
      return read({ test: words.looks[step.what].name, value: lookedLike(model, step.what) });
    case 'test': {
      const test = testOf(step.what);
      return read({ test: nameOf(test, system), value: shownIn(model.bench.read(test), system) });
    }
  }
}

interface KnownProps {
  readonly model: CaseModel;
}

/** Everything that is known of the car, what was just read first; then what was said of it. */
export function Known({ model }: KnownProps) {
  const { known } = words;
  return (
    <section class="case-part" aria-label={known.title}>
      <h3>{known.title}</h3>
      {model.steps.value.length === 0 ? <p class="muted">{known.none}</p> : <Lines model={model} />}
    </section>
  );
}

/** The same again, folded, where it would be out of sight. */
export function KnownAgain({ model }: KnownProps) {
  const steps = model.steps.value.length;
  if (steps === 0) return null;
  return (
    <div class="case-again">
      <More label={words.known.again({ steps: String(steps) })}>
        <Lines model={model} />
      </More>
    </div>
  );
}

function Lines({ model }: KnownProps) {
  const system = useUnits();
  const latest = [...model.steps.value].reverse();
  const items = (steps: readonly Step[]) =>
    steps.map((step) => <li key={step.what}>{lineOf(model, step, system)}</li>);
  const found = latest.filter(({ kind }) => kind !== 'ask');
  const said = latest.filter(({ kind }) => kind === 'ask');
  return (
    <>
      {found.length > 0 && (
        <ol class="case-known" reversed>
          {items(found)}
        </ol>
      )}
      {said.length > 0 && (
        <div class="case-said">
          <p>{words.known.said}</p>
          <ul class="case-known">{items(said)}</ul>
        </div>
      )}
    </>
  );
}
