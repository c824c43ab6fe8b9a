import { useSignal, type Signal } from '@preact/signals';
import { useLayoutEffect, useRef } from 'preact/hooks';
import { costOf } from '../cases/visit.ts';
import { isNumeric, missingFor, testOf, TESTS, type Test } from '../diagnosis/index.ts';
import { BeforeTest } from '../planner/BeforeTest.tsx';
import { nameOf, needsOf, shownIn } from '../planner/reading-text.ts';
import { words as planner } from '../planner/words.en.ts';
import { listOf } from '../quantity/lists.ts';
import { useUnits } from '../ui/use-units.ts';
import { Instrument } from './instruments/Instrument.tsx';
import type { CaseModel } from './model.ts';
import { words } from './words.en.ts';

interface MeasureProps {
  readonly model: CaseModel;
  /** Id of the test that lies open. */
  readonly open: Signal<string>;
}

const idOf = (test: Test): string => `case-test-${test.id}`;

const groups = [...new Set(TESTS.map(({ kind }) => planner.groups[kind]))];

/** Every test of the shop, by what it is read on. */
export function Measure({ model, open }: MeasureProps) {
  const { measure } = words;
  const { state } = model.standing.value;
  const warm = words.warmth[state.temperature];
  const there = state.fitted.flatMap((one) => words.fitted[one] ?? []);
  const offered = TESTS.filter(({ at }) => at.warmth !== 'frost' || model.bench.coldMorning);
  return (
    <section class="case-part case-measure" aria-label={measure.title}>
      <h3>{measure.title}</h3>
      <p>{there.length === 0 ? warm : words.state({ warm, there: listOf(there) })}</p>
      <p class="muted">{measure.note}</p>
      <Hint model={model} open={open} />
      {groups.map((group) => (
        <details key={group} class="more case-fold">
          <summary>{group}</summary>
          <ul class="case-tests">
            {offered
              .filter(({ kind }) => planner.groups[kind] === group)
              .map((test) => (
                <One key={test.id} model={model} test={test} open={open} />
              ))}
          </ul>
        </details>
      ))}
    </section>
  );
}

function One({ model, test, open }: MeasureProps & { readonly test: Test }) {
  const system = useUnits();
  const done = model.has({ kind: 'test', what: test.id });
  const isOpen = open.value === test.id;
  const name = nameOf(test, system);
  const minutes = String(Math.round(costOf({ kind: 'test', what: test.id }, model.standing.value)));
  const row = useRef<HTMLLIElement>(null);
  // What opens under a row at the foot of a phone, or takes the place of something longer, is brought into sight.
  useLayoutEffect(() => {
    if (isOpen) row.current?.scrollIntoView({ block: 'nearest' });
  }, [isOpen, done]);
  return (
    <li ref={row}>
      <button
        type="button"
        class="case-test"
        id={idOf(test)}
        aria-expanded={isOpen}
        onClick={() => (open.value = isOpen ? '' : test.id)}
      >
        <span>{name}</span>
        {done ? (
          <strong>{shownIn(model.bench.read(test), system)}</strong>
        ) : (
          <span>{planner.next.takes({ minutes })}</span>
        )}
      </button>
      {isOpen && (
        <div class="case-open">
          {done ? (
            <Instrument
              reading={model.bench.read(test)}
              sound={isNumeric(test) ? model.bench.sound(test) : undefined}
              trace={model.bench.trace}
            />
          ) : (
            <Before model={model} test={test} minutes={minutes} />
          )}
        </div>
      )}
    </li>
  );
}

/** What a test needs and what it can do to somebody, before it is done. */
function Before({
  model,
  test,
  minutes,
}: {
  readonly model: CaseModel;
  readonly test: Test;
  readonly minutes: string;
}) {
  const system = useUnits();
  const { measure } = words;
  const missing = missingFor(test, model.standing.value.state);
  return (
    <>
      <p>
        {needsOf(missing, system)} {measure.takes({ minutes })}
      </p>
      <BeforeTest test={test} />
      <button
        type="button"
        class="act"
        aria-label={`${measure.doIt}: ${nameOf(test, system)}`}
        onClick={() => {
          model.take({ kind: 'test', what: test.id });
          // The button goes; its row stays.
          document.getElementById(idOf(test))?.focus({ preventScroll: true });
        }}
      >
        {measure.doIt}
      </button>
    </>
  );
}

/** Asked for, the planner says what it would measure, and leads there. */
function Hint({ model, open }: MeasureProps) {
  const system = useUnits();
  const { measure } = words;
  const hinted = useSignal<readonly Test[] | null>(null);
  const failed = useSignal(false);
  const ask = async () => {
    try {
      const { nextFor } = await import('./load-planner.ts');
      const next = await nextFor({
        on: model.bench.transmission,
        readings: model.readings.value,
        state: model.standing.value.state,
      });
      hinted.value = next.slice(0, 2).map(({ test }) => testOf(test.id));
    } catch {
      failed.value = true;
    }
  };
  const goTo = (test: Test) => {
    open.value = test.id;
    const found = document.getElementById(idOf(test));
    found?.closest('details')?.setAttribute('open', '');
    // Its caution and its button stand below it.
    found?.focus({ preventScroll: true });
    found?.scrollIntoView({ block: 'start' });
  };
  const tests = hinted.value ?? [];
  const said = tests.length === 0 ? measure.noHint : measure.hinted(tests.length);
  return (
    <div class="case-hint">
      <button type="button" class="quiet" onClick={() => void ask()}>
        {measure.hint}
      </button>
      <p role="status">{failed.value ? planner.failed : hinted.value && said}</p>
      {tests.map((test) => (
        <p key={test.id}>
          <button type="button" class="quiet" onClick={() => goTo(test)}>
            {nameOf(test, system)}
          </button>
        </p>
      ))}
    </div>
  );
}
