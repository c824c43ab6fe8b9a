/** The tests' own strength: the code is changed wrongly in one place at a time, and the tests have to notice. */
import { readFileSync, writeFileSync } from 'node:fs';
import { keptFigures, type Figure } from '../form.ts';
import { interval } from './interval.ts';
import { lotOf, moduleNames, REACHES } from './modules.ts';
import { draw, tell, type Told, type ToldMutant } from './mutants.ts';
import { forget, install, mutantsOf, MISSED, NOTICED, tryOut, type Status } from './stryker.ts';
import { explainedSurvivors, unlisted } from './survivors.ts';

const ENOUGH = 0.85;

const count = (number: number): string => number.toLocaleString('en-US');
const percent = (share: number): string => `${(100 * share).toFixed(1)} %`;

interface Counted {
  readonly noticed: number;
  readonly missed: number;
}

/**
 * `all`: how many there are. `first`: how it was when the draw was tried for the first time. That is the share that says something of all
 * of them: what a draw showed has tests since, and they were written for it.
 */
export function scoreRow(
  name: string,
  { noticed, missed, all, first }: Counted & { readonly all: number; readonly first?: Counted },
): Figure {
  const tried = noticed + missed;
  const share = noticed / tried;
  const told = first ?? { noticed, missed };
  const untouched = told.noticed / (told.noticed + told.missed);
  const [low, high] = interval(told.noticed, told.noticed + told.missed);
  const since = untouched === share ? '' : `; ${percent(share)} with the tests written since`;
  return {
    what: whatOf(name),
    value:
      tried === all
        ? `${percent(share)} of all ${count(all)}`
        : `${percent(untouched)} of ${count(told.noticed + told.missed)} drawn from ${count(all)} (of all: ${percent(low)} to ${percent(high)})${since}`,
    bar: '85 % or more',
    met: (tried === all ? share : untouched) >= ENOUGH,
    command: COMMAND,
  };
}

const UNTOUCHED = new URL('./untouched.json', import.meta.url);
type Untouched = Readonly<Record<string, Counted & { readonly seed: string }>>;
const untouchedOnes = (): Untouched => JSON.parse(readFileSync(UNTOUCHED, 'utf8')) as Untouched;

/** How the draw did when it was tried for the first time, which a draw that is new here does now. */
function firstOf(name: string, now: Counted): Counted {
  const kept = untouchedOnes();
  const there = kept[name];
  const { seed } = lotOf(name);
  if (there?.seed === seed) return there;
  const next = { ...kept, [name]: { seed, ...now } };
  writeFileSync(UNTOUCHED, `${JSON.stringify(next, null, 2)}\n`);
  return now;
}
const COMMAND = 'npm run quality -- mutation';
const whatOf = (name: string): string => `src/${name}: wrong changes that a test notices`;
const listedOf = (name: string): string =>
  `src/${name}: changes that no test notices and no reason is given for, or reasons that have had their day`;

/** What became of each change: the tests farther off are asked only about what the near ones let pass. */
export function ask(
  mutants: readonly ToldMutant[],
  tried: (mutants: readonly ToldMutant[], reach: (typeof REACHES)[number]) => readonly Status[],
): ReadonlyMap<Told, Status> {
  const became = new Map<Told, Status>();
  for (const reach of REACHES) {
    const left = mutants.filter(({ told }) => {
      const before = became.get(told);
      return before === undefined || MISSED.includes(before);
    });
    const ended = tried(left, reach);
    left.forEach(({ told }, at) => became.set(told, ended[at] ?? 'NoCoverage'));
  }
  return became;
}

function rows(name: string, said: readonly string[]): Figure[] {
  const started = Date.now();
  if (!said.includes('again')) forget(name);
  const whole = said.includes('all');
  const all = tell(mutantsOf(name));
  const { drawn, seed } = lotOf(name);
  const ended = ask(whole ? all : draw(all, drawn, seed), (mutants, reach) =>
    tryOut(name, reach, mutants),
  );
  const which = (...kinds: readonly Status[]): readonly Told[] =>
    [...ended].flatMap(([told, status]) => (kinds.includes(status) ? [told] : []));
  const noticed = which(...NOTICED);
  const missed = which(...MISSED);
  const wrong = unlisted(
    missed,
    noticed,
    all.map(({ told }) => told),
    explainedSurvivors().filter(({ file }) => file.startsWith(`src/${name}/`)),
  );
  for (const line of wrong) console.log(line);
  console.log(`${name}: ${Math.round((Date.now() - started) / 1000)} s`);
  const counted = { noticed: noticed.length, missed: missed.length };
  const first = whole ? counted : firstOf(name, counted);
  return [
    scoreRow(name, { ...counted, all: all.length, first }),
    {
      what: listedOf(name),
      value: wrong.length,
      bar: '0',
      met: wrong.length === 0,
      command: COMMAND,
    },
  ];
}

/** Every change and not a draw; and only what no test noticed the last time, or was not reached when that run was stopped. */
const HOW = ['all', 'again'];
/** What may follow the name of this proof: how, and modules, if not all of them are to be tried. */
export const mutationWords: readonly string[] = [...HOW, ...moduleNames];

export function mutation(said: readonly string[]): Figure[] {
  install();
  const asked = said.filter((word) => !HOW.includes(word));
  const kept = keptFigures().find(({ name }) => name === 'mutation')?.figures ?? [];
  return moduleNames.flatMap((name) =>
    asked.length === 0 || asked.includes(name)
      ? rows(name, said)
      : kept.filter(({ what }) => what === whatOf(name) || what === listedOf(name)),
  );
}
