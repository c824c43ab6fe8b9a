import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import { formatNumber } from '../../quantity/print.ts';
import { count } from '../../quantity/quantities.ts';
import {
  LOG_RANGES,
  ROLES,
  UNITS,
  type LogRange,
  type LogUnit,
  type Role,
} from '../../log/roles.ts';
import type { DecimalMark } from '../../log/cells.ts';
import type { Separator } from '../../log/layout.ts';
import type { ColumnTrouble } from '../../log/trouble.ts';
import { words } from './column-words.en.ts';
import type { LogReader } from './model.ts';
import { troubleWords, unitDoubts } from './trouble-words.ts';

const NEEDED: readonly Role[] = ['time', 'turbine'];
const SEPARATORS: readonly Separator[] = [';', '\t', ','];
const NO_TROUBLES: readonly ColumnTrouble[] = [];
const MARKS: readonly DecimalMark[] = ['.', ','];

/** Which column is what, in which unit, and what the range column says. */
export function Columns({ model }: { readonly model: LogReader }) {
  const opened = model.opened.value;
  const troubles: readonly ColumnTrouble[] = model.read.value?.troubles ?? NO_TROUBLES;
  // What was right the last time needs no second look, unless something is wrong with it now.
  const keepOpen = useSignal(true);
  useEffect(() => {
    if (troubles.length > 0) keepOpen.value = true;
    else if (model.fromMemory.peek()) keepOpen.value = false;
  }, [opened, troubles]);
  if (opened === null) return null;
  const { layout, rows, skipped } = opened;
  const range = model.mapping.value.columns.range;
  const sayings = range === undefined ? [] : (opened.sayings[range.column] ?? []);
  return (
    <section class="log-columns no-print" aria-labelledby="log-columns-title">
      <h2 id="log-columns-title">{words.title}</h2>
      <p>
        {words.found({
          name: model.fileName.value,
          rows: formatNumber(rows, count, 'si'),
          columns: String(layout.names.length),
        })}{' '}
        {skipped > 0 && `${words.skipped(formatNumber(skipped, count, 'si'))} `}
        {model.fromMemory.value ? words.remembered : words.guessed}
      </p>
      {model.read.value?.log && (
        <p>
          <a href="#log-findings-title">{words.onward}</a>
        </p>
      )}
      <details class="log-layout" open={keepOpen.value}>
        <summary>{words.choices}</summary>
        <div class="log-roles">
          {ROLES.map((role) => (
            <RoleRow
              key={role}
              role={role}
              model={model}
              says={troubleWords(troubles, role)}
              likely={unitDoubts(troubles).find((doubt) => doubt.role === role)?.unit}
            />
          ))}
        </div>
        {sayings.length > 0 && <Ranges model={model} sayings={sayings} />}
      </details>
      <details class="log-layout">
        <summary>{words.layout}</summary>
        <div class="log-pair">
          <Pick
            id="log-separator"
            label={words.separator}
            value={layout.separator}
            options={SEPARATORS.map((one) => [one, words.separators[one]])}
            pick={(separator) =>
              void model.layOut({
                separator: separator as Separator,
                decimalMark: layout.decimalMark,
              })
            }
          />
          <Pick
            id="log-decimal"
            label={words.decimalMark}
            value={layout.decimalMark}
            options={MARKS.map((one) => [one, words.decimalMarks[one]])}
            pick={(mark) =>
              void model.layOut({ separator: layout.separator, decimalMark: mark as DecimalMark })
            }
          />
        </div>
      </details>
      <p class="muted" role="status">
        {model.notKept.value && words.notKept}
      </p>
    </section>
  );
}

interface PickProps {
  readonly id: string;
  readonly label: string;
  readonly value: string;
  readonly options: readonly (readonly [value: string, words: string])[];
  readonly pick: (value: string) => void;
  readonly describedBy?: string | undefined;
  readonly bare?: boolean;
}

function Pick({ id, label, value, options, pick, describedBy, bare = false }: PickProps) {
  return (
    <div class="choice choice-select">
      <label for={id} class={bare ? 'visually-hidden' : undefined}>
        {label}
      </label>
      <select
        id={id}
        value={value}
        aria-describedby={describedBy}
        onChange={(event) => pick(event.currentTarget.value)}
      >
        {options.map(([option, says]) => (
          <option key={option} value={option} selected={option === value}>
            {says}
          </option>
        ))}
      </select>
    </div>
  );
}

interface RoleRowProps {
  readonly role: Role;
  readonly model: LogReader;
  readonly says: string | null;
  /** The unit that the numbers look like. */
  readonly likely: LogUnit | undefined;
}

function RoleRow({ role, model, says, likely }: RoleRowProps) {
  const { names, sample } = model.opened.value?.layout ?? { names: [], sample: [] };
  const choice = model.mapping.value.columns[role];
  const label = NEEDED.includes(role)
    ? `${words.roles[role]} (${words.needed})`
    : words.roles[role];
  const begins = sample
    .map((row) => row[choice?.column ?? -1]?.trim() ?? '')
    .filter((cell) => cell !== '');
  const units = UNITS[role];
  return (
    <div class="log-role" data-role={role}>
      <Pick
        id={`log-${role}`}
        label={label}
        value={choice === undefined ? '' : String(choice.column)}
        options={[
          ['', words.none],
          ...names.map(
            (name, i) => [String(i), name === '' ? words.column(String(i + 1)) : name] as const,
          ),
        ]}
        pick={(column) => model.setColumn(role, column === '' ? null : Number(column))}
        describedBy={[`log-${role}-begins`, `log-${role}-says`].join(' ')}
      />
      {choice !== undefined && units.length > 1 && (
        <Pick
          id={`log-${role}-unit`}
          label={words.unitOf(words.roles[role])}
          value={choice.unit ?? ''}
          options={units.map((unit) => [unit, words.units[unit]])}
          pick={(unit) => model.setUnit(role, unit as LogUnit)}
          bare
        />
      )}
      <p class="log-begins muted" id={`log-${role}-begins`}>
        {choice !== undefined &&
          (begins.length === 0 ? words.noSample : words.sample(begins.slice(0, 3).join(' · ')))}
      </p>
      <p class="field-error" id={`log-${role}-says`} role="status">
        {says}
      </p>
      {likely !== undefined && (
        <button
          type="button"
          class="quiet log-read-as"
          onClick={() => {
            model.setUnit(role, likely);
            // The button goes with the question.
            document.getElementById(`log-${role}-unit`)?.focus();
          }}
        >
          {words.readAs(words.units[likely])}
        </button>
      )}
    </div>
  );
}

function Ranges({
  model,
  sayings,
}: {
  readonly model: LogReader;
  readonly sayings: readonly string[];
}) {
  const { ranges } = model.mapping.value;
  return (
    <fieldset class="log-ranges">
      <legend>{words.rangesTitle}</legend>
      <p class="muted">{words.rangesHow}</p>
      <div class="log-pairs">
        {sayings.map((saying, i) => (
          <Pick
            key={saying}
            id={`log-range-${i}`}
            label={saying}
            value={ranges[saying] ?? ''}
            options={[
              ['', words.noRange],
              ...LOG_RANGES.map((range) => [range, words.ranges[range]] as const),
            ]}
            pick={(range) => model.setRange(saying, range === '' ? null : (range as LogRange))}
          />
        ))}
      </div>
    </fieldset>
  );
}
