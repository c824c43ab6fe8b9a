import { format } from '../../quantity/print.ts';
import type { SheetField } from '../../own-sheet/fields.ts';
import type { UnitSystem } from '../../quantity/unit-system.ts';
import { still } from '../../ui/still.ts';
import type { TypedField } from '../../storage/sheets/own-sheet.ts';
import { words } from './field-words.en.ts';
import { saidOf, shownIn } from './sentences.ts';

export const idOf = (path: string): string => `sheet-${path.replaceAll('.', '-')}`;

/** Whose the number of a field is; nobody's while it cannot be read. */
export const whoseOf = (
  typed: TypedField | undefined,
  refused: boolean,
): 'assumed' | 'yours' | 'unread' =>
  typed === undefined ? 'assumed' : refused ? 'unread' : 'yours';

interface NumberFieldProps {
  readonly field: SheetField;
  readonly typed: TypedField | undefined;
  readonly wrong: string;
  /** Whether it cannot be read at all, and what may stand in its place; "" where nothing is offered. */
  readonly refused: boolean;
  readonly middle: string;
  readonly system: UnitSystem;
  readonly type: (path: string, value: TypedField | null) => void;
}

/** One number: what it is, where it is found, what is assumed where nothing is typed, and what is wrong with it. */
export const NumberField = still(
  ({ field, typed, wrong, refused, middle, system, type }: NumberFieldProps) => {
    const { path, quantity, assumed } = field;
    const { label, where } = saidOf(path);
    const id = idOf(path);
    const { symbol } = quantity[system];
    const plain = words.assumed(format(assumed, quantity, system));
    return (
      <div class="sheet-field" data-whose={whoseOf(typed, refused)}>
        <label for={id}>{label}</label>
        <span class="sheet-amount">
          <input
            id={id}
            type="text"
            inputMode="decimal"
            autoComplete="off"
            maxLength={60}
            value={shownIn(typed, field, system)}
            aria-invalid={wrong !== ''}
            aria-describedby={`${id}-whose ${id}-where ${id}-wrong`}
            onInput={({ currentTarget: { value } }) =>
              type(path, value.trim() === '' ? null : { text: value, units: system })
            }
          />
          <span class="sheet-unit">{symbol}</span>
          <span id={`${id}-whose`} class="sheet-whose">
            {typed === undefined ? plain : words[whoseOf(typed, refused)]}
          </span>
        </span>
        <span id={`${id}-where`} class="sheet-where muted">
          {where}
        </span>
        <p id={`${id}-wrong`} class="field-error" role="status">
          {wrong}
        </p>
        {typed !== undefined && middle !== '' && (
          <button
            type="button"
            class="quiet no-print"
            onClick={() => {
              type(path, { text: middle, units: typed.units });
              // The button goes with what was wrong.
              document.getElementById(id)?.focus();
            }}
          >
            {words.use(middle)}
          </button>
        )}
      </div>
    );
  },
);
