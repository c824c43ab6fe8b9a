import type { Summary } from '../../quiz/session.ts';
import { words } from './player/words.en.ts';

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
        {judgement(summary)}
      </p>
      <table>
        <caption>{words.table}</caption>
        <thead>
          <tr>
            <th scope="col">{words.said}</th>
            <th scope="col">{words.times}</th>
            <th scope="col">{words.right}</th>
          </tr>
        </thead>
        <tbody>
          {calibration.map((row) => (
            <tr key={row.certainty}>
              <th scope="row">{words.howSure[row.certainty]}</th>
              <td>{row.said}</td>
              <td>{row.said === 0 ? words.notUsed : row.right}</td>
            </tr>
          ))}
        </tbody>
      </table>
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

function judgement({ calibration, again }: Summary): string {
  const certain = calibration.find((c) => c.certainty === 3);
  const guessed = calibration.find((c) => c.certainty === 1);
  const wrong = (certain?.said ?? 0) - (certain?.right ?? 0);
  if (wrong > 0) {
    return words.certainAndWrong(wrong);
  }
  if (guessed !== undefined && guessed.said > 0 && guessed.right === guessed.said) {
    return words.rightGuesses;
  }
  return again.length === 0 ? words.nothingWrong : words.knewDoubt;
}
