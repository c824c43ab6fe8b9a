import { calibrationOf } from '../../quiz/record.ts';
import { areas, type Area } from '../../quiz/rehearsal/blueprint.ts';
import { readNext, scoreByArea, type Rehearsed } from '../../quiz/rehearsal/score.ts';
import type { Rehearsal, RehearsalItem } from '../../storage/rehearsals.ts';
import { dateAndTimeOf } from '../../ui/dates.ts';
import { judgement, Sureness } from '../../widgets/retrieval/Sureness.tsx';
import { Heads } from '../Heads.tsx';
import { words as named } from './area-words.en.ts';
import type { RehearsalModel } from './model.ts';
import { words } from './play-words.en.ts';
import { Told } from './Told.tsx';
import { hashOf } from './view.ts';

const { result } = words;

const isArea = (name: string): name is Area => (areas as readonly string[]).includes(name);
/** An area that the blueprint no longer has is not scored. */
const rehearsed = (items: readonly RehearsalItem[]): readonly Rehearsed[] =>
  items.flatMap(({ id, lesson, area, result: came }) =>
    isArea(area) ? [{ id, lesson, area, result: came }] : [],
  );

interface ResultProps {
  readonly model: RehearsalModel;
  readonly begun: number;
}

/** How a rehearsal went, area by area, what to read next, and every question explained. */
export function Result({ model, begun }: ResultProps) {
  const one = model.past.value.find((past) => past.begun === begun);
  if (one === undefined) return null;
  const titles = new Map(model.index.value?.lessons.map(({ id, title }) => [id, title]));
  return (
    <div class="rehearsal-result">
      <Sum one={one} />
      <Areas items={rehearsed(one.items)} />
      <Next items={rehearsed(one.items)} titles={titles} />
      <Sure items={one.items} />
      <div class="retrieval-row no-print">
        <button type="button" class="quiet" onClick={() => print()}>
          {result.print}
        </button>
        <a class="quiet" href={hashOf({ at: 'before' }) || '#'}>
          {result.toStart}
        </a>
      </div>
      <p class="print-only">{result.onScreen}</p>
      <Told model={model} one={one} />
    </div>
  );
}

function Sum({ one: { items, seconds, timed, ended, begun } }: { readonly one: Rehearsal }) {
  const right = items.filter((item) => item.result === 'right').length;
  const open = items.filter((item) => item.result === undefined).length;
  const minutes = Math.round(seconds / 60);
  const ran = seconds < 60 ? result.ranShort : result.ran({ minutes: String(minutes) });
  return (
    <p>
      <strong>{result.right({ right: String(right), asked: String(items.length) })}</strong>{' '}
      {open > 0 && `${result.open({ open: String(open) })} `}
      {timed ? ran : result.off} {result.of({ date: dateAndTimeOf(ended ?? begun) })}
    </p>
  );
}

function Areas({ items }: { readonly items: readonly Rehearsed[] }) {
  return (
    <section>
      <h3 id="rehearsal-areas">{result.areas}</h3>
      <div class="table-wide" role="region" aria-labelledby="rehearsal-areas" tabIndex={0}>
        <table>
          <Heads of={[result.area, result.rightHead, result.openHead]} />
          <tbody>
            {scoreByArea(items).map(({ area, asked, right, open }) => (
              <tr key={area}>
                <th scope="row">{named.areas[area]}</th>
                <td>{result.rightOf({ right: String(right), asked: String(asked) })}</td>
                <td>{open}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
      <p class="muted">{result.few}</p>
    </section>
  );
}

interface NextProps {
  readonly items: readonly Rehearsed[];
  readonly titles: ReadonlyMap<string, string>;
}

function Next({ items, titles }: NextProps) {
  const next = readNext(items);
  return (
    <section>
      <h3>{result.readNext}</h3>
      <p class="muted">{next.length === 0 ? result.nothing : result.weak}</p>
      <ol class="rehearsal-next">
        {next.map(({ area, right, asked, lessons }) => (
          <li key={area}>
            {result.line({ area: named.areas[area], right: String(right), asked: String(asked) })}
            <ul>
              {lessons.map(({ lesson }) => (
                <li key={lesson}>
                  <a href={`/lessons/${lesson}/`}>{titles.get(lesson) ?? lesson}</a>
                </li>
              ))}
            </ul>
          </li>
        ))}
      </ol>
    </section>
  );
}

function Sure({ items }: { readonly items: readonly RehearsalItem[] }) {
  const answers = items.flatMap(({ certainty, result: came }) =>
    certainty === undefined || came === undefined ? [] : [{ certainty, result: came }],
  );
  if (answers.length === 0) return null;
  const calibration = calibrationOf(answers);
  const allRight = items.every((item) => item.result === 'right');
  return (
    <section>
      <h3 id="rehearsal-sure">{result.sure}</h3>
      <div class="table-wide" role="region" aria-labelledby="rehearsal-sure" tabIndex={0}>
        <Sureness calibration={calibration} />
      </div>
      <p>{judgement(calibration, allRight)}</p>
    </section>
  );
}
