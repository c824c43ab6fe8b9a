/** What is said once the learner has named a fault, or given up. */
import { inOneCircuit, NAMES, type Name } from '../../diagnosis/hypotheses.ts';
import { words as names } from '../../car/words.en.ts';
import { listOf } from '../../quantity/lists.ts';
import { isLevel, MOST_IN_FRONT } from './front.ts';
import type { AskFirstModel } from './model.ts';
import { nameOf, printCount, printShare } from './print.ts';
import { words } from './words.en.ts';

const { verdict } = words;

/** The fault with its place, where it has one. */
export function hasWords({ has }: Pick<AskFirstModel, 'has'>): string {
  const { fault, circuit } = has.value;
  const name = nameOf(fault);
  return inOneCircuit(fault) ? verdict.at({ name, clutch: names.clutches[circuit] }) : name;
}

/** Nothing while nothing is named. */
export function verdictOf(model: AskFirstModel): string {
  const { fault } = model.has.value;
  const named = model.givens.named.value;
  if (named === 'none') return '';
  const shareOf = (name: Name): number => model.list.value[NAMES.indexOf(name)] ?? 0;
  const told = { it: hasWords(model), share: printShare(shareOf(fault)) };
  if (named === 'shown') return verdict.shown(told);
  if (named !== fault) {
    const alike =
      isLevel(shareOf(named), shareOf(fault)) && isLevel(shareOf(fault), shareOf(named));
    const both = { ...told, named: nameOf(named), other: printShare(shareOf(named)) };
    return alike ? verdict.alike(both) : verdict.wrong(both);
  }
  const others = NAMES.filter((name) => name !== fault && isLevel(shareOf(name), shareOf(fault)));
  if (others.length === 0) return verdict.right(told);
  return others.length > MOST_IN_FRONT
    ? verdict.lucky({ ...told, count: printCount(others.length) })
    : verdict.early({ ...told, others: listOf(others.map(nameOf)) });
}
