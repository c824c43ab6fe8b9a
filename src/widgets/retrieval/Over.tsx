import type { Summary } from '../../quiz/session.ts';
import { words } from './player/words.en.ts';
import { judgement, Sureness } from './Sureness.tsx';

interface OverProps {
  readonly summary: Summary;
  readonly objectives: readonly { readonly id: string; readonly text: string }[];
}

/** How it went: marks, how sure against how often right, and what to come back to, the surest errors first. */
export function Over({ summary, objectives }: OverProps) {
  const { asked, right, marks, best, calibration, again } = summary;
  const weak = [...new Set(again.flatMap((a) => a.objectives))]
    .map((id) => objectives.find((o) => o.id === id)?.text)
    .filter((text) => text !== undefined);
  return (
    <div class="retrieval-over">
      <p>
        {words.result(
          String(right),
          String(asked),
          marks < 0 ? `−${Math.abs(marks)}` : String(marks),
          String(best),
        )}{' '}
        {judgement(calibration, again.length === 0)}
      </p>
      <Sureness calibration={calibration} />
      {weak.length > 0 && (
        <>
          <h3>{words.again}</h3>
          <ul>
            {weak.map((text) => (
              <li key={text}>{text}</li>
            ))}
          </ul>
        </>
      )}
    </div>
  );
}
