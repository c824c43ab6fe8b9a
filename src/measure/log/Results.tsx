import { useSignal } from '@preact/signals';
import { useEffect, useRef } from 'preact/hooks';
import { useUnits } from '../../ui/use-units.ts';
import { ColdHot } from './ColdHot.tsx';
import { Engagements } from './Engagements.tsx';
import { blindWords, findingsOf, leftOutWords } from './findings.ts';
import type { LogReader, Place } from './model.ts';
import { coldAndHot } from './pairs.ts';
import { words as columns } from './column-words.en.ts';
import { PlaceInLog } from './PlaceInLog.tsx';
import { RatioPart } from './RatioPart.tsx';
import { Readings } from './Readings.tsx';
import { words } from './result-words.en.ts';
import { troubleWords, unitDoubts } from './trouble-words.ts';

/** A long drive has hundreds of engagements, and drawing all that is found in it would hold the page up. */
const MOST = 40;
const shownOf = <T,>(found: readonly T[], all: boolean): readonly T[] =>
  all ? found : found.slice(0, MOST);

/** What is said of the log, from the findings down to the readings. */
export function Results({ model }: { readonly model: LogReader }) {
  const system = useUnits();
  const all = useSignal(false);
  const place = useRef<HTMLElement>(null);
  const title = useRef<HTMLHeadingElement>(null);
  const read = model.read.value;
  const shown = model.place.value;
  const pressed = useRef<HTMLElement | null>(null);
  useEffect(() => {
    if (shown === null) return;
    // The focus goes along, so that the next key works where the eye is.
    place.current?.scrollIntoView({ block: 'start' });
    place.current?.focus({ preventScroll: true });
  }, [shown]);
  if (read?.log === undefined) return null;
  const { log, troubles, cuts, left } = read;
  const findings = findingsOf(log, system);
  const blind = [...blindWords(log), ...leftOutWords(left)];
  const go = (to: Place, from: HTMLElement): void => {
    pressed.current = from;
    model.goTo(to);
  };
  return (
    <div class="log-results">
      <section aria-labelledby="log-findings-title">
        <h2 id="log-findings-title" ref={title} tabIndex={-1}>
          {words.findings}
        </h2>
        {unitDoubts(troubles).map(({ role, unit }) => (
          <div key={role} class="log-doubt">
            <p class="field-error">
              {words.doubt(columns.roles[role])} {troubleWords(troubles, role)}
            </p>
            <button
              type="button"
              class="quiet no-print"
              onClick={() => {
                model.setUnit(role, unit);
                title.current?.focus();
              }}
            >
              {columns.readAs(columns.units[unit])}
            </button>
          </div>
        ))}
        {findings.length === 0 ? (
          <p>{words.nothing}</p>
        ) : (
          <>
            <p class="muted no-print">{words.findingsHow}</p>
            <ol class="log-findings">
              {shownOf(findings, all.value).map(({ text, place: to }) => (
                <li key={text}>
                  <button type="button" onClick={(event) => go(to, event.currentTarget)}>
                    {text}
                  </button>
                </li>
              ))}
            </ol>
            {findings.length > MOST && !all.value && (
              <button type="button" class="quiet no-print" onClick={() => (all.value = true)}>
                {words.showAll(String(findings.length))}
              </button>
            )}
          </>
        )}
        <h3>{words.blind}</h3>
        {blind.length === 0 ? (
          <p>{words.blindNothing}</p>
        ) : (
          <ul class="log-blind">
            {blind.map((text) => (
              <li key={text}>{text}</li>
            ))}
          </ul>
        )}
        <p class="muted">{words.limits}</p>
      </section>
      <ColdHot
        key={`${model.fileName.value} ${coldAndHot(log.engagements)
          .map(({ range }) => range)
          .join(' ')}`}
        log={log}
        cuts={cuts}
      />
      <section aria-labelledby="log-place-title" class="log-place" ref={place} tabIndex={-1}>
        <h2 id="log-place-title">{words.place}</h2>
        <PlaceInLog model={model} log={log} back={() => pressed.current?.focus()} />
      </section>
      <Engagements log={log} go={go} most={all.value ? Infinity : MOST} />
      <RatioPart model={model} log={log} />
      <Readings log={log} />
    </div>
  );
}
