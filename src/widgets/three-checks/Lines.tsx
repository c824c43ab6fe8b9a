import type { ThreeChecksModel } from './model.ts';
import { causeName, printMinutes } from './print.ts';
import { words } from './words.en.ts';

/** As wide as all four checks together. */
const WIDE = 1000;
const TICK = 4;

/** Each cause as a line that runs on with the minutes and ends at the check that took it off. */
export function Lines({ model }: { readonly model: ThreeChecksModel }) {
  const { complaint, givens, way, longest, minutes } = model;
  const at = (spent: number): number => Math.round((WIDE * spent) / longest.value);
  return (
    <ul class="check-lines" aria-label={words.list.name}>
      {complaint.value.causes.map((cause) => {
        const ended = way.value.find(({ off }) => off.includes(cause));
        const name = causeName(givens.complaint.value, cause);
        return (
          <li key={cause} class={ended ? 'check-off' : undefined}>
            {ended ? (
              <>
                <s>{name}</s>{' '}
                <span class="visually-hidden">
                  {words.list.off({ until: printMinutes(ended.until) })}
                </span>
              </>
            ) : (
              <span>{name}</span>
            )}
            <svg viewBox={`0 0 ${WIDE} 10`} preserveAspectRatio="none" aria-hidden="true">
              <rect class="check-line" y={4} width={at(ended?.until ?? minutes.value)} height={3} />
              {way.value.map(({ key, until }) => (
                <rect key={key} x={at(until) - TICK} width={TICK} height={10} />
              ))}
            </svg>
          </li>
        );
      })}
    </ul>
  );
}
