import { passageText, type Passage } from '../quiz/asked.ts';
import type { Lettered, Put } from '../quiz/on-paper/put-parts.ts';
import type { UnitSystem } from '../quantity/unit-system.ts';
import { ChartDrawing } from '../widgets/retrieval/ChartDrawing.tsx';
import { gapIn } from './gap-in.ts';
import { Line } from './Line.tsx';
import { words } from './words.en.ts';

const { paper: said } = words;

const Box = () => <span class="paper-box" />;

export function Question({ put, units }: { readonly put: Put; readonly units: UnitSystem }) {
  const { stem, chart, asks, lines, steps, gaps, readings, options, partners, blank } = put;
  const text = (passage: Passage): string => passageText(passage, units);
  const listed = (all: readonly Lettered[], box: boolean) => (
    <ul class={box ? 'paper-options' : 'paper-options paper-partners'}>
      {all.map(({ letter, words: passage }) => (
        <li key={letter}>
          {box && <Box />}
          <span class="paper-letter">{letter}.</span>
          <span>{text(passage)}</span>
        </li>
      ))}
    </ul>
  );
  return (
    <>
      <p>
        {text(stem)} <em>{said.asks[asks]}</em>
      </p>
      {chart !== undefined && (
        <figure class="question-chart">
          <ChartDrawing chart={chart} system={units} />
          <figcaption>{text(chart.about)}</figcaption>
        </figure>
      )}
      {readings && (
        <ul class="paper-readings">
          {readings.map((reading, place) => (
            <li key={place}>
              {text(reading.words)} ({said.minutes({ minutes: String(reading.minutes) })}):{' '}
              <strong>{text(reading.reads)}</strong>
            </li>
          ))}
        </ul>
      )}
      <div class={partners && 'paper-pairs'}>
        {lines && (
          <ul class="paper-lines">
            {lines.map((line, place) => (
              <li key={place}>
                <Line short />
                <span>{text(line)}</span>
              </li>
            ))}
          </ul>
        )}
        {partners && listed(partners, false)}
      </div>
      {steps && (
        <ol class="paper-steps">
          {steps.map((step, place) => (
            <li key={place}>{text(step)}</li>
          ))}
        </ol>
      )}
      {gaps && (
        <ul class="paper-gaps">
          {gaps.map((gap) => (
            <li key={gap}>
              <Box /> {gapIn(gap)}
            </li>
          ))}
        </ul>
      )}
      {options && listed(options, true)}
      {blank !== undefined && (
        <p class="paper-answer">
          <Line /> {blank[units]}
        </p>
      )}
    </>
  );
}
