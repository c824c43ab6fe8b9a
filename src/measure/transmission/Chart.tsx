import { CIRCUITS, type Circuit } from '../../engine/index.ts';
import {
  CHART_PATHS,
  circuitsAt,
  SEAL_PATH,
  textOfCircuits,
  typedAt,
  type Trouble,
} from '../../own-sheet/read-sheet.ts';
import type { OwnSheet, TypedField } from '../../storage/sheets/own-sheet.ts';
import { words } from './field-words.en.ts';
import { idOf, whoseOf } from './NumberField.tsx';
import { isRefused, saidOf } from './sentences.ts';

interface ChartProps {
  readonly sheet: OwnSheet;
  readonly trouble: (path: string) => Trouble | undefined;
  readonly wrong: (path: string) => string;
  readonly type: (path: string, value: TypedField | null) => void;
}

const { chart } = words;

/** The apply chart, range by range, and which circuits pass through the seal. */
export function Chart(props: ChartProps) {
  return (
    <section class="sheet-group" aria-labelledby="sheet-chart-title">
      <h3 id="sheet-chart-title">{chart.title}</h3>
      <p class="muted">{chart.how}</p>
      {CHART_PATHS.map((path) => (
        <Ticks key={path} path={path} {...props} />
      ))}
      <p class="muted">{chart.sealHow}</p>
      <Ticks path={SEAL_PATH} {...props} />
    </section>
  );
}

function Ticks({ path, sheet, trouble, wrong, type }: ChartProps & { readonly path: string }) {
  const { label } = saidOf(path);
  const on = circuitsAt(sheet, path);
  const whose = whoseOf(typedAt(sheet, path), isRefused(trouble(path)));
  const id = idOf(path);
  const tick = (circuit: Circuit, ticked: boolean): void => {
    const next = CIRCUITS.filter((one) => (one === circuit ? ticked : on.includes(one)));
    type(path, { text: textOfCircuits(next), units: 'si' });
  };
  return (
    <fieldset class="choice sheet-ticks" data-whose={whose}>
      <legend>{label}</legend>
      <div class="choice-options">
        {CIRCUITS.map((circuit, i) => (
          <label key={circuit} class="choice-option">
            <input
              type="checkbox"
              id={i === 0 ? id : undefined}
              checked={on.includes(circuit)}
              aria-describedby={`${id}-whose ${id}-wrong`}
              onChange={(event) => tick(circuit, event.currentTarget.checked)}
            />
            <span class="choice-words">{chart.circuits[circuit]}</span>
          </label>
        ))}
        <span id={`${id}-whose`} class="sheet-whose">
          {whose === 'assumed' ? words.assumedShort : words[whose]}
        </span>
        {whose !== 'assumed' && (
          <button
            type="button"
            class="quiet no-print"
            aria-label={chart.again(label)}
            onClick={() => type(path, null)}
          >
            {chart.againShort}
          </button>
        )}
      </div>
      <p id={`${id}-wrong`} class="field-error" role="status">
        {wrong(path)}
      </p>
    </fieldset>
  );
}
