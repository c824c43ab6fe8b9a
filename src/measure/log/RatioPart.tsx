import { useSignal } from '@preact/signals';
import type { LogRead } from '../../log/analyse.ts';
import { format, formatNumber } from '../../quantity/print.ts';
import { parseAmount } from '../../quantity/parse-amount.ts';
import { TRAINING, type LogReader, type RatioSource } from './model.ts';
import { ratio, seconds } from './quantities.ts';
import { words } from './result-words.en.ts';

const SOURCES: readonly RatioSource[] = ['training', 'own', 'log'];
/** Of any gear that a range begins in. */
const RANGE = { min: 0.5, max: 20 };

interface RatioPartProps {
  readonly model: LogReader;
  readonly log: LogRead;
}

/** Which ratios slip is reckoned with, and which the log shows by itself. */
export function RatioPart({ model, log }: RatioPartProps) {
  const source = model.source.value;
  const { drive, reverse } = model.ratios();
  const has = (range: 'drive' | 'reverse') => log.gears.some((gear) => gear.range === range);
  const missing = (['drive', 'reverse'] as const).filter((range) => !has(range));
  return (
    <section aria-labelledby="log-ratios-title" class="log-ratios">
      <h2 id="log-ratios-title">{words.ratios}</h2>
      <p>
        {words.inForce({
          drive: formatNumber(drive, ratio, 'si'),
          reverse: formatNumber(reverse, ratio, 'si'),
        })}{' '}
        {words.firstOnly}
      </p>
      <fieldset class="choice no-print">
        <legend class="visually-hidden">{words.ratios}</legend>
        <div class="choice-options">
          {SOURCES.map((one) => (
            <label key={one} class="choice-option">
              <input
                type="radio"
                name="log-ratio-source"
                value={one}
                checked={source === one}
                disabled={one === 'log' && log.gears.length === 0}
                onChange={() => model.setRatios(one)}
              />
              <span class="choice-words">{words.sources[one]}</span>
            </label>
          ))}
        </div>
      </fieldset>
      {source === 'own' && <Own model={model} />}
      {source === 'log' &&
        missing.map((range) => <p key={range}>{words.noSuchRatio(words.ranges[range])}</p>)}
      <h3>{words.gears}</h3>
      {log.gears.length === 0 ? <p>{words.noGears}</p> : <Gears log={log} />}
    </section>
  );
}

function Own({ model }: { readonly model: LogReader }) {
  return (
    <div class="log-pair no-print">
      <Field model={model} range="drive" label={words.firstGear} />
      <Field model={model} range="reverse" label={words.reverseGear} />
    </div>
  );
}

interface FieldProps {
  readonly model: LogReader;
  readonly range: 'drive' | 'reverse';
  readonly label: string;
}

function Field({ model, range, label }: FieldProps) {
  const wrong = useSignal('');
  const id = `log-ratio-${range}`;
  return (
    <div class="log-field">
      <label for={id}>{label}</label>
      <input
        id={id}
        type="text"
        inputMode="decimal"
        defaultValue={formatNumber(model.own.value[range], ratio, 'si')}
        aria-invalid={wrong.value !== ''}
        aria-describedby={`${id}-wrong`}
        onChange={(event) => {
          const parsed = parseAmount(event.currentTarget.value, ratio, 'si', {
            ...RANGE,
            example: TRAINING[range],
          });
          wrong.value = parsed.ok ? '' : parsed.sentence;
          if (parsed.ok) model.setRatios('own', { ...model.own.value, [range]: parsed.value });
        }}
      />
      <p class="field-error" id={`${id}-wrong`} role="status">
        {wrong.value}
      </p>
    </div>
  );
}

function Gears({ log }: { readonly log: LogRead }) {
  const { gearColumns: columns } = words;
  return (
    <>
      <div class="table-scroll" role="region" tabIndex={0} aria-label={words.gears}>
        <table class="log-table">
          <thead>
            <tr>
              {[columns.range, columns.ratio, columns.spread, columns.seconds].map((label) => (
                <th key={label} scope="col">
                  {label}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {log.gears.map((gear) => (
              <tr key={`${gear.range} ${gear.ratio}`}>
                <th scope="row">{words.ranges[gear.range]}</th>
                <td class="number">{formatNumber(gear.ratio, ratio, 'si')}</td>
                <td class="number">
                  {words.between(
                    formatNumber(gear.low, ratio, 'si'),
                    formatNumber(gear.high, ratio, 'si'),
                  )}
                </td>
                <td class="number">{format(gear.seconds, seconds, 'si')}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
      <p class="muted">{words.gearsCaution}</p>
    </>
  );
}
