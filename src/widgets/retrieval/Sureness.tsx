import type { Summary } from '../../quiz/session.ts';
import { words } from './player/words.en.ts';

/** How often each certainty was said, and how often it was right. */
export function Sureness({ calibration }: Pick<Summary, 'calibration'>) {
  return (
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
  );
}

/** What that says of somebody, in a sentence. */
export function judgement(calibration: Summary['calibration'], allRight: boolean): string {
  const certain = calibration.find((c) => c.certainty === 3);
  const guessed = calibration.find((c) => c.certainty === 1);
  const wrong = (certain?.said ?? 0) - (certain?.right ?? 0);
  if (wrong > 0) {
    return words.certainAndWrong(wrong);
  }
  if (guessed !== undefined && guessed.said > 0 && guessed.right === guessed.said) {
    return words.rightGuesses;
  }
  return allRight ? words.nothingWrong : words.knewDoubt;
}
