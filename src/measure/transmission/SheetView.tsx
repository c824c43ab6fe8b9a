import { useSignal } from '@preact/signals';
import { useEffect, useMemo } from 'preact/hooks';
import type { FluidClass } from '../../engine/index.ts';
import { FIELDS, type FieldGroup } from '../../own-sheet/fields.ts';
import {
  FLUID_PATH,
  fluidOf,
  OWN_FLUID,
  readSheet,
  typedAt,
  type SheetRead,
  type Trouble,
} from '../../own-sheet/read-sheet.ts';
import { TableStanding } from '../../own-sheet/TableStanding.tsx';
import { chosenBy } from '../../own-sheet/chosen-here.ts';
import { words as car } from '../../car/words.en.ts';
import type { OwnSheet, TypedField } from '../../storage/sheets/own-sheet.ts';
import { LONGEST_NAME } from '../../storage/sheets/sheet-form.ts';
import { More } from '../../ui/More.tsx';
import { useUnits } from '../../ui/use-units.ts';
import { Chart } from './Chart.tsx';
import { words as said } from './field-words.en.ts';
import type { SheetsModel } from './model.ts';
import { idOf, NumberField, whoseOf } from './NumberField.tsx';
import { saveFile } from '../../ui/save-file.ts';
import { isRefused, middleOf, saidOf, sentenceOf } from './sentences.ts';
import { SoundCar } from './SoundCar.tsx';
import { words } from './words.en.ts';

export interface SheetProps {
  readonly sheets: SheetsModel;
  readonly id: string;
  readonly close: () => void;
}
type Type = (path: string, value: TypedField | null) => void;

const FLUIDS = Object.keys(car.fluids) as readonly FluidClass[];
const FIRST: readonly FieldGroup[] = ['ratios', 'commands', 'areas'];
const FOLDED: readonly FieldGroup[] = [
  'clutches',
  'pump',
  'feed',
  'leaks',
  'rules',
  'converter',
  'vehicle',
  'sump',
];

/** One sheet: what matters and can be known first, the rest folded, and what the model makes of it. */
export function SheetView({ sheets, id, close }: SheetProps) {
  const system = useUnits();
  const sheet = sheets.sheet(id);
  const type = useMemo(
    (): Type => (path, value) => {
      const now = sheets.sheet(id);
      if (now) sheets.type(now, path, value);
    },
    [],
  );
  if (sheet === undefined) return null;
  const read = readSheet(sheet);
  const wrong = (path: string): string => {
    const trouble = read.troubles.get(path);
    return trouble === undefined ? '' : sentenceOf(trouble, path, sheet, system);
  };
  const part: PartProps = { sheet, trouble: (path) => read.troubles.get(path), wrong, type };
  const fields = (group: FieldGroup) => <Fields group={group} {...part} />;
  return (
    <div class="own-sheet">
      <p class="sheet-top no-print">
        <button type="button" class="quiet" onClick={close}>
          {words.back}
        </button>
      </p>
      <h2 id="sheet-title" tabIndex={-1}>
        {sheet.name.value}
      </h2>
      <p class="muted no-print">{words.kept}</p>
      <Counted read={read} />
      <Named sheets={sheets} sheet={sheet} />
      {fields('ratios')}
      <Chart {...part} />
      {FIRST.slice(1).map(fields)}
      <h3 class="sheet-more">{words.more}</h3>
      {FOLDED.map((group) => (
        <More key={group} label={said.groups[group].title}>
          {fields(group)}
        </More>
      ))}
      <More label={said.groups.fluid.title}>
        <FluidPart {...part} />
      </More>
      <SoundCar read={read} goTo={goTo} />
      {read.whole !== null && <TablePart id={id} />}
      <p class="sheet-acts no-print">
        <button type="button" class="quiet" onClick={() => globalThis.print()}>
          {words.print}
        </button>
        <button
          type="button"
          class="quiet"
          onClick={() => saveFile(words.fileName, sheets.fileOf(sheet))}
        >
          {words.saveOne}
        </button>
      </p>
    </div>
  );
}

/** How much of it is typed, and the way to each field that cannot be right. */
function Counted({ read }: { readonly read: SheetRead }) {
  const { yours, assumed, of, troubles } = read;
  const paths = [...troubles.keys()];
  return (
    <div class="sheet-counted">
      <p class="next-yours">
        {words.count({ yours: String(yours), of: String(of), assumed: String(assumed) })}
      </p>
      <div role="status">
        {paths.length > 0 && <p class="field-error">{words.mend(String(paths.length))}</p>}
      </div>
      {paths.length > 0 && (
        <ul class="sheet-mend no-print">
          {paths.map((path) => (
            <li key={path}>
              <button type="button" class="quiet" onClick={() => goTo(path)}>
                {words.goTo(saidOf(path).label)}
              </button>
            </li>
          ))}
        </ul>
      )}
    </div>
  );
}

function goTo(path: string): void {
  const field = document.getElementById(idOf(path));
  const fold = field?.closest('details');
  if (fold) fold.open = true;
  field?.focus();
  field?.scrollIntoView({ block: 'center' });
}

function Named({ sheets, sheet }: { readonly sheets: SheetsModel; readonly sheet: OwnSheet }) {
  const empty = useSignal(false);
  return (
    <div class="sheet-field no-print">
      <label for="sheet-name">{words.name}</label>
      <input
        id="sheet-name"
        type="text"
        autoComplete="off"
        maxLength={LONGEST_NAME}
        defaultValue={sheet.name.value}
        aria-invalid={empty.value}
        aria-describedby="sheet-name-wrong"
        onInput={({ currentTarget: { value } }) => {
          empty.value = value.trim() === '';
          if (!empty.value) sheets.rename(sheet, value.trim());
        }}
      />
      <p id="sheet-name-wrong" class="field-error" role="status">
        {empty.value && words.nameEmpty}
      </p>
    </div>
  );
}

interface PartProps {
  readonly sheet: OwnSheet;
  readonly trouble: (path: string) => Trouble | undefined;
  readonly wrong: (path: string) => string;
  readonly type: Type;
}

function Fields({
  group,
  sheet,
  trouble,
  wrong,
  type,
}: PartProps & { readonly group: FieldGroup }) {
  const system = useUnits();
  const { title, how } = said.groups[group];
  return (
    <section class="sheet-group" aria-label={title}>
      <h3>{title}</h3>
      <p class="muted">{how}</p>
      <div class="sheet-fields">
        {FIELDS[group].map((field) => (
          <NumberField
            key={field.path}
            field={field}
            typed={typedAt(sheet, field.path)}
            wrong={wrong(field.path)}
            refused={isRefused(trouble(field.path))}
            middle={middleOf(trouble(field.path))}
            system={system}
            type={type}
          />
        ))}
      </div>
    </section>
  );
}

function FluidPart(props: PartProps) {
  const { sheet, trouble, wrong, type } = props;
  const typed = typedAt(sheet, FLUID_PATH);
  const id = idOf(FLUID_PATH);
  const whose = whoseOf(typed, isRefused(trouble(FLUID_PATH)));
  return (
    <>
      <div class="sheet-field" data-whose={whose}>
        <label for={id}>{said.fluid.label}</label>
        <span class="sheet-amount">
          <select
            id={id}
            value={typed === undefined ? '' : typed.text}
            aria-describedby={`${id}-whose ${id}-where ${id}-wrong`}
            onChange={({ currentTarget: { value } }) =>
              type(FLUID_PATH, value === '' ? null : { text: value, units: 'si' })
            }
          >
            <option value="">{said.fluid.assumed(car.fluids['low-viscosity'])}</option>
            {FLUIDS.map((fluid) => (
              <option key={fluid} value={fluid}>
                {car.fluids[fluid]}
              </option>
            ))}
            <option value={OWN_FLUID}>{said.fluid.own}</option>
          </select>
          <span id={`${id}-whose`} class="sheet-whose">
            {whose === 'assumed' ? said.assumedShort : said[whose]}
          </span>
        </span>
        <span id={`${id}-where`} class="sheet-where muted">
          {said.fluid.where}
        </span>
        <p id={`${id}-wrong`} class="field-error" role="status">
          {wrong(FLUID_PATH)}
        </p>
      </div>
      {fluidOf(sheet) === OWN_FLUID && <Fields group="fluid" {...props} />}
    </>
  );
}

/** The planner's table of this sheet, made here or where it is first needed. */
function TablePart({ id }: { readonly id: string }) {
  const which = useSignal(id);
  const chosen = useMemo(() => chosenBy(which), []);
  useEffect(() => chosen.end, []);
  return (
    <section class="sheet-planner no-print" aria-label={words.planner}>
      <h3>{words.planner}</h3>
      <TableStanding chosen={chosen} />
      <p class="sheet-acts">
        <a href="/measure/jobs/">{words.toJobs}</a>
        <a href="/measure/">{words.toPlanner}</a>
      </p>
    </section>
  );
}
