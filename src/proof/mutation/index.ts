/** The tests' own strength: the code is changed wrongly in one place at a time, and the tests have to notice. */
import { readFileSync, writeFileSync } from 'node:fs';
import { keptFigures, type Figure } from '../form.ts';
import { interval } from './interval.ts';
import { drawnOf, moduleNames, REACHES } from './modules.ts';
import { draw, tell, toldKey, type Told, type ToldMutant } from './mutants.ts';
import { forget, install, mutantsOf, MISSED, NOTICED, tryOut, type Status } from './stryker.ts';
import { explainedSurvivors, unlisted } from './survivors.ts';

const ENOUGH = 0.85;
const SEED = '2026-11-30, fourth draw';

const count = (number: number): string => number.toLocaleString('en-US');
const percent = (share: number): string => `${(100 * share).toFixed(1)} %`;

/** `same`: of those missed, how many calculate the same for every input, by their reason. */
interface Counted {
  readonly noticed: number;
  readonly missed: number;
  readonly same?: number;
}
/** A change that calculates the same for every input can be noticed by nobody. */
const shareOf = ({ noticed, missed, same = 0 }: Counted): number =>
  noticed / (noticed + missed - same);

/**
 * `all`: how many there are. `first`: how it was when the draw was tried for the first time. That is the share that says something of all
 * of them: what a draw showed has tests since, and they were written for it.
 *
 * The score is killed mutants over those that are not equivalent (Y. Jia and M. Harman, An Analysis and Survey of the Development of
 * Mutation Testing, IEEE Transactions on Software Engineering 37 (2011) 649-678; from memory). The share with them in it stands beside it.
 */
export function scoreRow(
  name: string,
  {
    noticed,
    missed,
    same = 0,
    all,
    first,
  }: Counted & { readonly all: number; readonly first?: Counted },
): Figure {
  const now = { noticed, missed, same };
  const told = first ?? now;
  const alike = told.same ?? 0;
  const counted = told.noticed + told.missed - alike;
  const [low, high] = interval(told.noticed, counted);
  const every = noticed + missed === all;
  return {
    what: whatOf(name),
    value: [
      every
        ? `${percent(shareOf(told))} of all ${count(counted)}`
        : `${percent(shareOf(told))} of ${count(counted)} drawn from ${count(all)} (of all: ${percent(low)} to ${percent(high)})`,
      ...(alike === 0
        ? []
        : [
            `${percent(shareOf({ ...told, same: 0 }))} with ${alike} that calculate the same for every input`,
          ]),
      ...(shareOf(told) === shareOf(now)
        ? []
        : [`${percent(shareOf(now))} with the tests written since`]),
    ].join('; '),
    bar: '85 % or more',
    met: shareOf(told) >= ENOUGH,
    command: COMMAND,
  };
}

const UNTOUCHED = new URL('./untouched.json', import.meta.url);
/** Of each module the draw that was tried first, with what it missed then, by `toldKey`. */
type Untouched = Readonly<
  Record<
    string,
    { readonly seed: string; readonly noticed: number; readonly missed: readonly string[] }
  >
>;
const untouchedOnes = (): Untouched => JSON.parse(readFileSync(UNTOUCHED, 'utf8')) as Untouched;

/** How the draw did when it was tried for the first time, which a draw that is new here does now. */
function firstOf(name: string, noticed: number, missed: readonly Told[]) {
  const kept = untouchedOnes();
  const there = kept[name];
  if (there?.seed === SEED) return there;
  const now = { seed: SEED, noticed, missed: missed.map(toldKey) };
  writeFileSync(UNTOUCHED, `${JSON.stringify({ ...kept, [name]: now }, null, 2)}\n`);
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
  const ended = ask(whole ? all : draw(all, drawnOf(name), SEED), (mutants, reach) =>
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
  const same = new Set(
    explainedSurvivors().flatMap((one) => (one.same === true ? toldKey(one) : [])),
  );
  const counted = (found: number, keys: readonly string[]): Counted => ({
    noticed: found,
    missed: keys.length,
    same: keys.filter((key) => same.has(key)).length,
  });
  const now = counted(noticed.length, missed.map(toldKey));
  const first = whole ? undefined : firstOf(name, noticed.length, missed);
  return [
    scoreRow(name, {
      ...now,
      all: all.length,
      ...(first && { first: counted(first.noticed, first.missed) }),
    }),
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
