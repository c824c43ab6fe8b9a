import { useSignal } from '@preact/signals';
import { useEffect, useMemo } from 'preact/hooks';
import type { TakenReading } from '../../diagnosis/index.ts';
import { Form } from '../../planner/Form.tsx';
import { Frosty } from '../../planner/Frosty.tsx';
import type { answers } from './answers.ts';
import { think } from '../../planner/thinker.ts';
import { words } from '../../planner/words.en.ts';
import { useReady } from '../../ui/use-units.ts';
import { makeModel } from './model.ts';
import { keep, kept } from './place.ts';
import { Readings } from './Readings.tsx';

/** The planner: readings in, what it may be and which test next out. */
export function View() {
  const model = useMemo(() => makeModel(think), []);
  const shown = useSignal<typeof answers | null>(null);
  const failed = useSignal(false);
  const ready = useReady();
  useEffect(() => {
    model.readings.value = kept();
    const unkeep = model.readings.subscribe(keep);
    import('./answers.ts').then(
      ({ answers: loaded }) => {
        shown.value = loaded;
      },
      () => {
        failed.value = true;
      },
    );
    return () => {
      unkeep();
      model.stop();
    };
  }, []);
  const said = shown.value;
  const add = (reading: TakenReading) => {
    model.add(reading);
    // What it comes to stands under the button, which a thumb may press at the lower edge of the screen.
    requestAnimationFrame(() => {
      document
        .querySelector('.next-test :is(.live-text, .own-no-list)')
        ?.scrollIntoView({ block: 'nearest' });
    });
  };
  // Its first answer comes a moment after it, on a slow phone several seconds.
  const { tableIs, advice } = model;
  const coming = said === null || tableIs.value === 'fetching' || tableIs.value === 'ready';
  const waiting = coming && advice.value === null;
  const lost = failed.value || model.lost.value;
  return (
    <div class="next-test" id="next-test" data-ready={ready && said !== null}>
      <div>
        <Form model={model} add={add} />
        {said && !lost && (
          <>
            <said.NoList model={model} />
            <said.Now model={model} />
            <said.Clashes model={model} />
          </>
        )}
        <Frosty model={model} />
      </div>
      <div>
        <Readings model={model} />
        {said && <said.On model={model} />}
      </div>
      {(waiting || lost) && <p role="status">{lost ? words.failed : words.asleep}</p>}
      {said && (
        <>
          <said.Causes model={model} />
          <said.Leak model={model} />
          <said.Next model={model} />
        </>
      )}
      {said === null ? (
        <p class="muted">{words.assumed}</p>
      ) : (
        tableIs.value !== 'gone' && <said.Assumed model={model} />
      )}
    </div>
  );
}
