import { readNext, type Calibration, type DayRecord, type LessonRecord } from '../quiz/record.ts';
import { More } from '../ui/More.tsx';
import { dayInWords } from './date-field.ts';
import { Heads } from './Heads.tsx';
import { words } from './record-words.en.ts';

type Titles = ReadonlyMap<string, string>;
interface LessonsProps {
  readonly records: readonly LessonRecord[];
  readonly titles: Titles;
}

export function ReadNext({ records, titles }: LessonsProps) {
  const next = readNext(records);
  return (
    <section>
      <h2>{words.next.title}</h2>
      {next.length === 0 ? (
        <p>{words.next.nothing}</p>
      ) : (
        <ol>
          {next.map(({ lesson, shaky }) => (
            <li key={lesson}>
              <a class="way" href={`/lessons/${lesson}/`}>
                {titles.get(lesson) ?? lesson}
              </a>{' '}
              <span class="muted">{words.next.shaky({ count: String(shaky) })}</span>
            </li>
          ))}
        </ol>
      )}
    </section>
  );
}

export function Lessons({ records, titles }: LessonsProps) {
  const { title, about, lesson: head, asked, of, solid, shaky, notYet } = words.lessons;
  const open = records.filter((row) => row.asked === 0);
  return (
    <section>
      <h2>{title}</h2>
      <p class="muted">{about}</p>
      <table>
        <Heads of={[head, asked, solid, shaky]} />
        <tbody>
          {records
            .filter((row) => row.asked > 0)
            .map((row) => (
              <tr key={row.lesson}>
                <th scope="row">{titles.get(row.lesson) ?? row.lesson}</th>
                <td class="qty">{of({ asked: String(row.asked), all: String(row.questions) })}</td>
                <td>{row.solid}</td>
                <td>{row.shaky}</td>
              </tr>
            ))}
        </tbody>
      </table>
      {open.length > 0 && (
        <More label={notYet({ count: String(open.length) })}>
          <ul>
            {open.map(({ lesson }) => (
              <li key={lesson}>{titles.get(lesson) ?? lesson}</li>
            ))}
          </ul>
        </More>
      )}
    </section>
  );
}

/** Fewer answers than these say nothing of a share. */
const ENOUGH = 10;

const shareOf = ({ said, right }: Calibration): number => (100 * right) / said;

/** The picture: a bar for each of the three, as long as so many in a hundred were right. */
function Bar({ row }: { readonly row: Calibration }) {
  const share = shareOf(row);
  return (
    <svg class="record-bar" viewBox="0 0 100 12" aria-hidden="true" preserveAspectRatio="none">
      <rect class="record-all" x="0" y="0" width="100" height="12" />
      <rect class="record-right" x="0" y="0" width={share} height="12" />
    </svg>
  );
}

function judged(rows: readonly Calibration[]): string {
  const [guess, , certain] = rows;
  if (certain !== undefined && certain.said >= ENOUGH && shareOf(certain) < 80)
    return words.sure.over;
  if (guess !== undefined && guess.said >= ENOUGH && shareOf(guess) > 67) return words.sure.under;
  return '';
}

export function Sure({ rows }: { readonly rows: readonly Calibration[] }) {
  const { title, about, said, times, right, share, howSure, few } = words.sure;
  return (
    <section>
      <h2>{title}</h2>
      <p class="muted">{about}</p>
      <table>
        <Heads of={[said, times, right, share]} />
        <tbody>
          {rows.map((row) => (
            <tr key={row.certainty}>
              <th scope="row">{howSure[row.certainty]}</th>
              <td>{row.said}</td>
              <td>{row.right}</td>
              <td>
                {row.said < ENOUGH ? (
                  <span class="muted">{few}</span>
                ) : (
                  <>
                    {Math.round(shareOf(row))} <Bar row={row} />
                  </>
                )}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      <p>{judged(rows)}</p>
    </section>
  );
}

export function Days({ days }: { readonly days: readonly DayRecord[] }) {
  const { title, day: head, answers, right } = words.history;
  return (
    <section>
      <h2>{title}</h2>
      <table>
        <Heads of={[head, answers, right]} />
        <tbody>
          {days.map((row) => (
            <tr key={row.day}>
              <th scope="row">{dayInWords(row.day)}</th>
              <td>{row.answers}</td>
              <td>{row.right}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}
