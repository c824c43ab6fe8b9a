import { useState } from 'preact/hooks';
import type { Asked } from '../../quiz/asked.ts';
import type { Passage } from '../../quiz/passage.ts';
import type { ItemStatistics } from '../../quiz/class/item-statistics.ts';
import { printNumber } from '../../quantity/language.ts';
import { WordsText } from '../../widgets/retrieval/WordsText.tsx';
import { Heads } from '../Heads.tsx';
import type { ClassModel } from './model.ts';
import { words } from './words.en.ts';

const { items: said } = words;
/** Shown before somebody asks for all. */
const FIRST = 10;

/** Every question that somebody answered, the one first that fewest had right. */
export function ItemTable({ model }: { readonly model: ClassModel }) {
  const [all, setAll] = useState(false);
  const items = model.items.value;
  const shown = all ? items : items.slice(0, FIRST);
  const known = new Set(model.index.value?.items.map(({ id }) => id));
  const heads = [said.question, said.right, said.share, said.rest, said.drew];
  return (
    <section aria-labelledby="class-items">
      <h2 id="class-items">{said.title}</h2>
      <p class="muted">{said.about}</p>
      <div
        class="table-wide class-questions"
        tabIndex={0}
        role="group"
        aria-labelledby="class-items"
      >
        <table>
          <Heads of={heads} />
          <tbody>
            {shown.map((one) => (
              <Row
                key={one.item}
                one={one}
                asked={model.questions.value.get(one.item)}
                gone={!known.has(one.item)}
              />
            ))}
          </tbody>
        </table>
      </div>
      {!all && items.length > FIRST && (
        <p class="no-print">
          <button type="button" class="quiet" onClick={() => setAll(true)}>
            {said.more({ count: String(items.length) })}
          </button>
        </p>
      )}
    </section>
  );
}

interface RowProps {
  readonly one: ItemStatistics;
  readonly asked: Asked | undefined;
  readonly gone: boolean;
}

function Row({ one, asked, gone }: RowProps) {
  const few = <span class="muted">{said.few}</span>;
  return (
    <tr>
      <th scope="row">
        {asked !== undefined ? <WordsText words={asked.stem} /> : gone ? said.gone : said.coming}
      </th>
      <td>
        {said.of({ right: String(one.right), asked: String(one.answers) })}
        {one.certainAndWrong > 0 && (
          <span class="choice-note">{said.certain({ count: String(one.certainAndWrong) })}</span>
        )}
      </td>
      <td>{one.p === undefined ? few : Math.round(100 * one.p)}</td>
      <td>
        {one.itemRest !== undefined
          ? printNumber(one.itemRest, 2)
          : one.p === undefined
            ? few
            : said.alike}
      </td>
      <td class="class-drew">
        <Drew one={one} asked={asked} />
      </td>
    </tr>
  );
}

/** What could be taken for the answer: a wrong option, or a named wrong rule that leads to a number. */
function wrongOnes(asked: Asked | undefined): readonly { id: string; words: Passage }[] {
  if (asked === undefined) return [];
  if (asked.kind === 'number')
    return asked.distractors.map(({ rule, mistake }) => ({
      id: rule,
      words: [said.rule({ mistake })],
    }));
  return 'options' in asked ? asked.options.filter(({ correct }) => !correct) : [];
}

/** The wrong one that most took. */
function Drew({ one, asked }: Pick<RowProps, 'one' | 'asked'>) {
  const [most] = wrongOnes(asked)
    .map(({ id, words: named }) => ({ named, times: one.chosen.get(id) ?? 0 }))
    .filter(({ times }) => times > 0)
    .sort((a, b) => b.times - a.times);
  if (most === undefined) return null;
  return (
    <>
      <WordsText words={most.named} /> ({most.times})
    </>
  );
}
