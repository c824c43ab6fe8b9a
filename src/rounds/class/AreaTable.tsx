import { listOf } from '../../quantity/lists.ts';
import { words as areaWords } from '../rehearsal/area-words.en.ts';
import type { ClassModel } from './model.ts';
import { words } from './words.en.ts';

const { title, about, area: head, cell, notAsked, strong: ask, strongTitle, nobody } = words.areas;

/** A row for each area, a column for each learner. */
export function AreaTable({ model }: { readonly model: ClassModel }) {
  const members = model.members.value;
  const strong = model.strong.value;
  return (
    <section aria-labelledby="class-areas">
      <h2 id="class-areas">{title}</h2>
      <p class="muted">{about}</p>
      {/* A class is wider than a phone: the table scrolls by itself, and keys reach it. */}
      <div class="table-wide" tabIndex={0} role="group" aria-labelledby="class-areas">
        <table>
          <thead>
            <tr>
              <th scope="col">{head}</th>
              {members.map((one) => (
                <th key={one.number} scope="col">
                  {model.nameOf(one)}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {model.byArea.value.map(({ area, cells }) => (
              <tr key={area}>
                <th scope="row">{areaWords.areas[area]}</th>
                {cells.map(({ asked, solid }, at) => (
                  <td key={members[at]?.number}>
                    {asked === 0 ? (
                      <span class="muted">{notAsked}</span>
                    ) : (
                      cell({ solid: String(solid), asked: String(asked) })
                    )}
                  </td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      </div>
      <h3>{strongTitle}</h3>
      {strong.length === 0 ? (
        <p>{nobody}</p>
      ) : (
        <ul>
          {strong.map(({ area, names }) => (
            <li key={area}>
              {ask({ area: areaWords.areas[area], names: listOf(names, 'disjunction') })}
            </li>
          ))}
        </ul>
      )}
    </section>
  );
}
