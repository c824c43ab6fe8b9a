import type { Certainty } from '../../quiz/certainty.ts';
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

const nothingSaid = { said: 0, right: 0 };

/** What that says of somebody, in a sentence. */
export function judgement(calibration: Summary['calibration'], allRight: boolean): string {
  const row = (certainty: Certainty) => {
    const { said, right } = calibration.find((c) => c.certainty === certainty) ?? nothingSaid;
    return { said, wrong: said - right };
  };
  const [guessed, fairly, certain] = [row(1), row(2), row(3)];
  if (certain.wrong > 0) return words.certainAndWrong(certain.wrong);
  if (fairly.wrong > 0 && fairly.wrong >= guessed.wrong)
    return words.fairlySureAndWrong(fairly.wrong);
  if (guessed.wrong > 0) return words.knewDoubt;
  if (guessed.said > 0) return words.rightGuesses;
  return allRight ? words.nothingWrong : words.openLeft;
}
