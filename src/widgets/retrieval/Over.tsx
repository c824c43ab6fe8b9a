import type { Summary } from '../../quiz/session.ts';
import { howSure } from './how-sure.ts';

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
        {right} of {asked} right, {marks < 0 ? `−${Math.abs(marks)}` : marks} of {best} marks.{' '}
        {judgement(summary)}
      </p>
      <table>
        <caption>How sure you were, and how often you were right</caption>
        <thead>
          <tr>
            <th scope="col">You said</th>
            <th scope="col">Times</th>
            <th scope="col">Right</th>
          </tr>
        </thead>
        <tbody>
          {calibration.map((row) => (
            <tr key={row.certainty}>
              <th scope="row">{howSure[row.certainty]}</th>
              <td>{row.said}</td>
              <td>{row.said === 0 ? 'not used' : row.right}</td>
            </tr>
          ))}
        </tbody>
      </table>
      {weak.length > 0 && (
        <>
          <h3>Look at these again</h3>
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
    return `You were certain and wrong ${wrong === 1 ? 'once' : `${wrong} times`}: start there, because on a car nobody would have stopped you.`;
  }
  if (guessed !== undefined && guessed.said > 0 && guessed.right === guessed.said) {
    return 'Every guess was right: you know more than you trust yourself with.';
  }
  if (again.length === 0)
    return 'Nothing wrong this time. Come back in a few days and see if it stayed.';
  return 'You knew where you were not sure, and that is worth a lot in a shop.';
}
