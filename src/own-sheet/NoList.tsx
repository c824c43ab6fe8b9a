import type { PlannerModel } from '../planner/model.ts';
import { SHEETS_AT } from './TransmissionChoice.tsx';
import { words } from './words.en.ts';

interface NoListProps {
  readonly model: Pick<PlannerModel, 'tableIs' | 'basis'>;
  /** The sheet that is chosen. */
  readonly which: string;
}

/** Why nothing is concluded from the readings, and where that is mended; nothing where a list is there or comes by itself. */
export function NoList({ model, which }: NoListProps) {
  const is = model.tableIs.value;
  if (is === 'ready' || is === 'fetching') return null;
  const { noList, choice } = words;
  const name = model.basis.value?.own?.name ?? '';
  const link =
    is === 'noTable' || is === 'faulty'
      ? { to: `${SHEETS_AT}#${which}`, says: choice.open }
      : { to: SHEETS_AT, says: noList.toSheets };
  return (
    <div class="own-no-list">
      <p role="status">{is === 'gone' || is === 'missed' ? noList[is] : noList[is](name)}</p>
      {is !== 'making' && is !== 'missed' && (
        <p class="own-link">
          <a href={link.to}>{link.says}</a>
        </p>
      )}
    </div>
  );
}
