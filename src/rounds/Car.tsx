import { carOfTheDay } from '../cases/car-of-the-day.ts';
import { searchOf } from '../practice/case-address.ts';
import type { Day } from '../quiz/schedule/day.ts';
import { words } from './words.en.ts';

/** One short case a day, the same for everybody. */
export function Car({ day }: { readonly day: Day }) {
  const key = carOfTheDay(day);
  const { title, about, kinds, go } = words.car;
  return (
    <section class="today-car">
      <h2>{title}</h2>
      <p>{about({ number: String(key.seed), kind: kinds[key.level] })}</p>
      <a class="quiet" href={`/practise/case/${searchOf({ kind: 'made', key })}`}>
        {go}
      </a>
    </section>
  );
}
