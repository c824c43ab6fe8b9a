import type { LogRead } from '../../log/analyse.ts';
import type { EngagementRead } from '../../log/measure.ts';
import { bandOf } from '../../log/readings.ts';
import { NOT_STOPPED_AFTER } from '../../log/stop-time.ts';
import { format } from '../../quantity/print.ts';
import { Both } from '../../ui/Both.tsx';
import { useUnits } from '../../ui/use-units.ts';
import { printInterval, printLong, whereOf } from './findings.ts';
import type { Place } from './model.ts';
import { seconds, speed, temperature } from './quantities.ts';
import { words } from './result-words.en.ts';

interface EngagementsProps {
  readonly log: LogRead;
  readonly go: (place: Place, from: HTMLElement) => void;
  /** How many rows are shown; those of the same group stand together. */
  readonly most: number;
}

const ORDER = ['frost', 'cold', 'between', 'hot', 'unknown'] as const;
const groupOf = ({ tempC }: EngagementRead): (typeof ORDER)[number] =>
  tempC === null ? 'unknown' : (bandOf(tempC) ?? 'between');

const stopWords = ({ stop }: EngagementRead): string =>
  stop.kind === 'stopped'
    ? printInterval(stop.after)
    : stop.kind === 'notStopped'
      ? words.notInTime(format(NOT_STOPPED_AFTER, seconds, 'si'))
      : words.notRead;

function slipWords({ slip }: EngagementRead): string {
  if (slip.kind !== 'measured') return words.notRead;
  const [peak, high] = [format(slip.peak, speed, 'si'), format(slip.between.high, speed, 'si')];
  return peak === high ? peak : words.upTo(peak, high);
}

/** All engagements of the log, grouped by the temperature of the fluid. */
export function Engagements({ log, go, most }: EngagementsProps) {
  const system = useUnits();
  if (log.engagements.length === 0) return null;
  const rows = log.engagements
    .map((read, index) => ({ read, index, group: groupOf(read) }))
    .sort((a, b) => ORDER.indexOf(a.group) - ORDER.indexOf(b.group) || a.index - b.index);
  const { columns } = words;
  return (
    <section aria-labelledby="log-engagements-title">
      <h2 id="log-engagements-title">{words.engagements}</h2>
      <div class="table-scroll wide" role="region" tabIndex={0} aria-label={words.engagementsTable}>
        <table class="log-table">
          <thead>
            <tr>
              {[
                columns.group,
                columns.temp,
                columns.range,
                columns.stop,
                columns.slip,
                columns.where,
              ].map((label) => (
                <th key={label} scope="col">
                  {label}
                </th>
              ))}
              <th scope="col" class="no-print">
                {columns.show}
              </th>
            </tr>
          </thead>
          <tbody>
            {rows.slice(0, most).map(({ read, index, group }) => (
              <tr key={index}>
                <th scope="row">{words.bands[group]}</th>
                <td class="number">
                  {read.tempC === null ? '–' : <Both value={read.tempC} quantity={temperature} />}
                </td>
                <td>{words.ranges[read.selection.range]}</td>
                <td class="number">{stopWords(read)}</td>
                <td class="number">{slipWords(read)}</td>
                <td class="number">{printLong(read.at)}</td>
                <td class="no-print">
                  <button
                    type="button"
                    class="quiet"
                    aria-label={words.showLong(whereOf(read, system))}
                    onClick={(event) => go({ at: read.at, engagement: index }, event.currentTarget)}
                  >
                    {words.show}
                  </button>
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
      {rows.length > most && (
        <p class="muted">{words.firstOf(String(most), String(rows.length))}</p>
      )}
    </section>
  );
}
