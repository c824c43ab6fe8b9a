/** What a device or a file holds, in words. */
import { languages } from '../language/languages.ts';
import { listOf } from '../quantity/lists.ts';
import { dayOf, type Day } from '../quiz/schedule/day.ts';
import type { Bundle } from '../storage/bundle/bundle.ts';
import type { Faults, Place } from '../storage/bundle/device.ts';
import type { Plan } from '../storage/plan.ts';
import type { Rehearsal } from '../storage/rehearsals.ts';
import { underWay } from '../storage/round-under-way.ts';
import { dateOf } from '../ui/dates.ts';
import { words } from './words.en.ts';

/** A day as a date field gives it; what is none is printed as it stands. */
function examDay(exam: string): string {
  const at = Date.parse(`${exam}T00:00:00Z`);
  if (Number.isNaN(at)) return exam;
  return new Intl.DateTimeFormat(languages.en.locale, {
    dateStyle: 'medium',
    timeZone: 'UTC',
  }).format(at);
}

const today = (): Day => dayOf(Date.now(), new Date().getTimezoneOffset());

export function planInWords(
  { exam, minutes, round }: Plan,
  { answers }: Pick<Bundle, 'answers'>,
  day = today(),
): string {
  const { plan } = words;
  const said =
    exam === null
      ? plan.noExam({ minutes: String(minutes) })
      : plan.exam({ date: examDay(exam), minutes: String(minutes) });
  return underWay(round, answers, day) === undefined ? said : plan.underWay({ plan: said });
}

const some = (count: number, say: (p: { count: string }) => string): string[] =>
  count === 0 ? [] : [say({ count: String(count) })];

function answersInWords({ answers }: Bundle): string {
  const predictions = answers.filter(({ answer }) => answer.kind === 'prediction').length;
  const what = listOf([
    ...some(answers.length - predictions, words.here.answers),
    ...some(predictions, words.here.predictions),
  ]);
  const times = answers.map(({ at }) => at);
  const [from, to] = [
    times.reduce((a, b) => Math.min(a, b)),
    times.reduce((a, b) => Math.max(a, b)),
  ];
  const [first, last] = [dateOf(from), dateOf(to)];
  return first === last ? what : words.here.fromTo({ what, from: first, to: last });
}

export const rehearsalInWords = ({ begun, items }: Rehearsal): string =>
  words.here.rehearsal({
    date: dateOf(begun),
    done: String(items.filter(({ given }) => given !== undefined).length),
    of: String(items.length),
  });

const standing = (records: readonly { readonly deleted: { readonly value: boolean } }[]): number =>
  records.filter(({ deleted }) => !deleted.value).length;

/** A line for each thing that there is some of. */
export function factsOf(bundle: Bundle, unreadable = 0, day = today()): readonly string[] {
  const { plan, progress, visits, columns, settings, answers } = bundle;
  const { jobs, sheets, meetings } = bundle;
  const rehearsal = bundle.rehearsal?.rehearsal;
  const { here } = words;
  return [
    ...(answers.length === 0 ? [] : [answersInWords(bundle)]),
    ...some(progress?.done.length ?? 0, here.lessons),
    ...(progress?.last ? [here.place] : []),
    ...(plan === null ? [] : [here.plan({ plan: planInWords(plan, bundle, day) })]),
    ...(rehearsal ? [rehearsalInWords(rehearsal)] : []),
    ...some(bundle.rehearsed?.rehearsals.length ?? 0, here.rehearsed),
    ...some(Object.keys(visits?.byCase ?? {}).length, here.cases),
    ...some(standing(jobs), here.jobs),
    ...some(standing(sheets), here.sheets),
    ...some(standing(meetings), here.meetings),
    ...some(columns?.tools.length ?? 0, here.columns),
    ...(settings === null ? [] : [here.settings]),
    ...some(unreadable, here.unreadable),
  ];
}

type Said = keyof Omit<typeof words.faults, 'why'>;
/** A sentence for each place that failed. */
export const faultsInWords = (faults: Faults, said: Said): readonly string[] =>
  (Object.entries(faults) as [Place, NonNullable<Faults[Place]>][]).map(([place, why]) =>
    words.faults[said]({ what: words.places[place], why: words.faults.why[why] }),
  );

export const lacksInWords = (faults: Faults): string =>
  words.save.lacks({
    what: listOf(Object.keys(faults).map((place) => words.places[place as Place])),
  });
