import { useSignal } from '@preact/signals';
import { useRef } from 'preact/hooks';
import type { LogRead } from '../../log/analyse.ts';
import { BANDS, diagnosisReadings } from '../../log/readings.ts';
import { format, formatNumber } from '../../quantity/print.ts';
import { More } from '../../ui/More.tsx';
import { useUnits } from '../../ui/use-units.ts';
import { IntoJob } from './IntoJob.tsx';
import { temperature } from './quantities.ts';
import { words } from './result-words.en.ts';

/** The readings that diagnosis takes, as text to copy. */
export function Readings({ log }: { readonly log: LogRead }) {
  const system = useUnits();
  const state = useSignal<'' | 'copied' | 'byHand'>('');
  const field = useRef<HTMLTextAreaElement>(null);
  const readings = diagnosisReadings(log.engagements);
  const text = JSON.stringify(readings, null, 1);
  const band = ([low, high]: readonly [number, number]): string =>
    words.between(formatNumber(low, temperature, system), format(high, temperature, system));
  const copy = async (): Promise<void> => {
    try {
      await navigator.clipboard.writeText(text);
      state.value = 'copied';
    } catch {
      state.value = 'byHand';
      field.current?.select();
    }
  };
  return (
    <section aria-labelledby="log-readings-title" class="log-readings">
      <h2 id="log-readings-title">{words.readings}</h2>
      <p>{words.readingsHow}</p>
      <p class="muted">
        {words.bandsHow({ frost: band(BANDS.frost), cold: band(BANDS.cold), hot: band(BANDS.hot) })}
      </p>
      {readings.length === 0 ? (
        <p>{words.noReadings}</p>
      ) : (
        <>
          <IntoJob key={text} readings={readings} />
          <More label={words.asText}>
            <p class="no-print">
              <button type="button" onClick={() => void copy()}>
                {words.copy}
              </button>{' '}
              <span role="status">
                {state.value === 'copied'
                  ? words.copied
                  : state.value === 'byHand'
                    ? words.copyByHand
                    : ''}
              </span>
            </p>
            <textarea
              ref={field}
              class="log-text"
              aria-label={words.readingsLabel}
              readOnly
              rows={Math.min(12, text.split('\n').length)}
              value={text}
            />
          </More>
          <pre class="log-printed" aria-hidden="true">
            {text}
          </pre>
        </>
      )}
    </section>
  );
}
