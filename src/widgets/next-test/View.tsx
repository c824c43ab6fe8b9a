import { useSignal } from '@preact/signals';
import { useEffect, useMemo } from 'preact/hooks';
import { Form } from '../../planner/Form.tsx';
import { Assumed } from '../../planner/FromYours.tsx';
import { Frosty } from '../../planner/Frosty.tsx';
import type { Chosen } from '../../own-sheet/chosen.ts';
import type * as ownSheet from '../../own-sheet/load.ts';
import type { answers } from '../../planner/load.ts';
import { words } from '../../planner/words.en.ts';
import { useReady } from '../../ui/use-units.ts';
import { makeModel } from './model.ts';
import { keep, keepOn, kept, keptOn } from './place.ts';
import { Readings } from './Readings.tsx';

/** The planner: readings in, what it may be and which test next out. */
export function View() {
  const model = useMemo(makeModel, []);
  const shown = useSignal<typeof answers | null>(null);
  const choice = useSignal<{ readonly own: typeof ownSheet; readonly chosen: Chosen } | null>(null);
  const failed = useSignal(false);
  const ready = useReady();
  useEffect(() => {
    model.readings.value = kept();
    model.which.value = keptOn();
    const stop = [model.readings.subscribe(keep), model.which.subscribe(keepOn)];
    Promise.all([import('../../planner/load.ts'), import('../../own-sheet/load.ts')]).then(
      ([{ planner, answers: loaded }, own]) => {
        const chosen = own.chosenBy(model.which, planner);
        stop.push(own.follow(model, chosen), chosen.end);
        choice.value = { own, chosen };
        shown.value = loaded;
      },
      () => {
        failed.value = true;
      },
    );
    return () => {
      for (const end of stop) end();
    };
  }, []);
  const said = shown.value;
  const choose = choice.value;
  const waiting = said === null;
  return (
    <div class="next-test" id="next-test" data-ready={ready && !waiting}>
      <Form model={model} add={model.add} />
      <Frosty model={model} />
      <Readings model={model} />
      {choose && (
        <choose.own.TransmissionChoice
          chosen={choose.chosen}
          choose={(which) => (model.which.value = which)}
        />
      )}
      {waiting && <p role="status">{failed.value ? words.failed : words.asleep}</p>}
      {said && (
        <>
          <said.Causes model={model} />
          <said.Leak model={model} />
          <said.Next model={model} />
        </>
      )}
      <Assumed model={model} />
    </div>
  );
}
