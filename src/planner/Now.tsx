import { plainClash, SURE } from '../diagnosis/index.ts';
import { LiveText } from '../ui/LiveText.tsx';
import type { UnitSystem } from '../quantity/unit-system.ts';
import { useUnits } from '../ui/use-units.ts';
import { share } from './Lists.tsx';
import { noTestLeft } from './no-test-left.ts';
import type { PlannerModel } from './model.ts';
import { words } from './now-words.en.ts';
import { nameOf, shownIn } from './reading-text.ts';
import { words as planner } from './words.en.ts';

type NowModel = Pick<PlannerModel, 'advice' | 'clashing' | 'ranking' | 'readings'>;

/** What the readings come to: the cause that stands first, and the test that tells most, if one does. */
function standing({ advice, ranking }: NowModel) {
  const said = advice.value;
  const [top] = said?.faults ?? [];
  if (ranking.value || said === null || said.clash === null || top === undefined) return 'weighing';
  return said.clash ? 'clashing' : { said, top, best: said.next[0] };
}

function comesTo(model: NowModel, system: UnitSystem): string {
  const now = standing(model);
  if (typeof now === 'string') return words[now];
  const { said, top, best } = now;
  const named = planner.faults[top.fault];
  const part = share(top.probability, system);
  const first =
    top.fault === 'unlisted' && top.probability >= SURE
      ? words.fitsNothing({ unlisted: named, share: part })
      : words.first({ top: named, share: part });
  if (best === undefined) return `${first} ${noTestLeft(said)}`;
  const { test, minutes } = best;
  const next = { test: nameOf(test, system), minutes: String(Math.round(minutes)) };
  return `${first} ${words.next(next)}`;
}

/** The same for a bar: a line for the cause, one for the test; none where there is nothing to say yet. */
export function inShort(model: NowModel, system: UnitSystem): readonly string[] {
  const now = standing(model);
  const read = model.readings.value.length > 0;
  const { short } = words;
  if (now === 'weighing') return read && model.ranking.value ? [words.weighing] : [];
  if (now === 'clashing') return [short.clashing];
  const { top, best } = now;
  const cause = { top: planner.faults[top.fault], share: share(top.probability, system) };
  const next = best && short.next({ test: nameOf(best.test, system) });
  return [...(read ? [short.first(cause)] : []), next ?? short.noneLeft];
}

/** What the readings come to, where the hand is: shown, and read out after each one. */
export function Now({ model }: { readonly model: NowModel }) {
  const system = useUnits();
  // Without an answer and without one on its way, its transmission is still to be worked out.
  const none = model.advice.value === null && !model.ranking.value;
  if (none || model.readings.value.length === 0) return null;
  return <LiveText visible text={comesTo(model, system)} />;
}

/** Readings that cannot both be right, two and two. */
export function Clashes({ model }: { readonly model: NowModel }) {
  const system = useUnits();
  const found = model.clashing.value;
  // What was said of other readings names some that are gone.
  if (found?.of.readings !== model.readings.value) return null;
  const named = (place: number): string => {
    const one = found.of.readings[place];
    if (one === undefined) return '';
    return planner.readings.did({ test: nameOf(one.test, system), value: shownIn(one, system) });
  };
  const whyOf = (first: number, second: number) => {
    const [one, other] = [found.of.readings[first], found.of.readings[second]];
    return (one && other && plainClash(one, other)) ?? 'known';
  };
  return found.before.map(({ first, second }) => (
    <p key={`${first} ${second}`} class="field-error" role="alert">
      {words.clash[whyOf(first, second)]({ one: named(first), other: named(second) })}
    </p>
  ));
}
