import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import { circuitOf } from '../../engine/index.ts';
import type { ListedSheet } from '../../own-sheet/list.ts';
import type { WholeCarModel } from './model.ts';
import { words } from './own-words.en.ts';

interface OnOwnProps {
  readonly model: WholeCarModel;
  /** A prediction and a task are about the training transmission: a sheet may be chosen when everything is open. */
  readonly open: boolean;
}

const saidOf = ({ name, yours, assumed }: ListedSheet): string =>
  words.from({ name, yours: String(yours), assumed: String(assumed) });

/** Runs both cars on a sheet of one's own; the sheets of this device are looked up when that is asked for. */
export function OnOwnSheet({ model, open }: OnOwnProps) {
  const list = useSignal<readonly ListedSheet[] | null>(null);
  const missed = useSignal(false);
  const chosen = useSignal('');
  const choose = (id: string): void => {
    chosen.value = id;
    const sheet = list.peek()?.find((one) => one.id === id);
    model.own.value = sheet?.plant ? { plant: sheet.plant, said: saidOf(sheet) } : null;
  };
  useEffect(() => {
    if (open) choose(chosen.peek());
    else model.own.value = null;
  }, [open]);
  if (!open) return null;
  const load = (): void => {
    import('../../own-sheet/list.ts')
      .then(({ listSheets }) => listSheets())
      .then(
        (found) => {
          list.value = found;
        },
        () => {
          missed.value = true;
        },
      );
  };
  const sheet = list.value?.find(({ id }) => id === chosen.value);
  const circuit = circuitOf[model.givens.range.value];
  const past =
    model.givens.fault.value === 'transferSeal' &&
    model.own.value?.plant.leaks[circuit].transferSeal.width === 0;
  return (
    <section class="whole-car-own no-print" aria-label={words.title}>
      <h4>{words.title}</h4>
      {list.value === null ? (
        <button type="button" class="quiet" onClick={load}>
          {words.ask}
        </button>
      ) : list.value.length === 0 ? (
        <p role="status">{words.none}</p>
      ) : (
        <div class="choice choice-select">
          <label for="whole-car-sheet">{words.label}</label>
          <select
            id="whole-car-sheet"
            value={chosen.value}
            onChange={(event) => choose(event.currentTarget.value)}
          >
            <option value="">{words.training}</option>
            {list.value.map(({ id, name }) => (
              <option key={id} value={id}>
                {name}
              </option>
            ))}
          </select>
        </div>
      )}
      <div role="status">
        {missed.value && <p class="field-error">{words.missed}</p>}
        {sheet?.plant === null && <p class="field-error">{words.faulty(sheet.name)}</p>}
        {sheet?.plant && <p>{words.how}</p>}
        {past && <p>{words.past(words.clutches[circuit])}</p>}
      </div>
      <p class="links-alone">
        <a href="/measure/transmission/">{words.enter}</a>
      </p>
    </section>
  );
}
