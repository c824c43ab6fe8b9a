import type { Chosen } from './chosen.ts';
import { TableStanding } from './TableStanding.tsx';
import { words } from './words.en.ts';

/** Where sheets of one's own are entered. */
export const SHEETS_AT = '/measure/transmission/';

interface ChoiceProps {
  readonly chosen: Chosen;
  readonly choose: (which: string) => void;
}

/** Which transmission the answers on this page go by. */
export function TransmissionChoice({ chosen, choose }: ChoiceProps) {
  const { choice } = words;
  const list = chosen.list.value;
  const which = chosen.which.value;
  const own = chosen.basis.value?.own;
  const known = which === 'training' || which === 'second' || own !== undefined;
  return (
    <section class="own-choice" aria-label={choice.label}>
      <label for="own-which">{choice.label}</label>
      <select id="own-which" value={which} onChange={(event) => choose(event.currentTarget.value)}>
        <option value="training">{choice.training}</option>
        <option value="second">{choice.second}</option>
        {list !== null && list.length > 0 && (
          <optgroup label={choice.yours}>
            {list.map(({ id, name }) => (
              <option key={id} value={id}>
                {name.value}
              </option>
            ))}
          </optgroup>
        )}
        {!known && <option value={which}>{choice.unknown}</option>}
      </select>
      <TableStanding chosen={chosen} />
      <p class="own-link no-print">
        <a href={own === undefined ? SHEETS_AT : `${SHEETS_AT}#${which}`}>
          {own === undefined ? choice.enter : choice.open}
        </a>
      </p>
    </section>
  );
}
