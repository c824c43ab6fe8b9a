import { useSignal } from '@preact/signals';
import { useEffect, useMemo } from 'preact/hooks';
import { useReady } from '../../ui/use-units.ts';
import { Form } from './Form.tsx';
import { Leak } from './Leak.tsx';
import { Causes, Next, Readings } from './Lists.tsx';
import { makeModel } from './model.ts';
import { keep, kept } from './place.ts';
import { words } from './words.en.ts';

/** The planner: readings in, what it may be and which test next out. */
export function View() {
  const model = useMemo(makeModel, []);
  const failed = useSignal(false);
  const ready = useReady();
  useEffect(() => {
    model.readings.value = kept();
    const stop = model.readings.subscribe(keep);
    import('./load.ts').then(
      ({ planner }) => {
        model.planner.value = planner;
      },
      () => {
        failed.value = true;
      },
    );
    return stop;
  }, []);
  const waiting = model.planner.value === null;
  return (
    <div class="next-test" id="next-test" data-ready={ready && !waiting}>
      <Form model={model} />
      <label class="next-check">
        <input
          type="checkbox"
          checked={model.coldMorning.value}
          onChange={(event) => (model.coldMorning.value = event.currentTarget.checked)}
        />
        {words.form.frost}
      </label>
      <Readings model={model} />
      {waiting && <p role="status">{failed.value ? words.failed : words.asleep}</p>}
      <Causes model={model} />
      <Leak model={model} />
      <Next model={model} />
      <p class="muted">{words.assumed}</p>
    </div>
  );
}
