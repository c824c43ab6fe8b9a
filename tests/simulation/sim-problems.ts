import { schemaProblems } from '../ui/schema-problems.ts';
import { currentValues } from '../../src/simulation/current-values.ts';
import { linkSchema } from '../../src/simulation/later/link-schema.ts';
import type { Givens, SimModel, SimSpec, TasksFile } from '../../src/simulation/sim-spec.ts';

/**
 * What is wrong with a simulation as written: the learning rules that a machine can check. Each
 * widget's test expects an empty list. The model is run, so a task that starts done or a
 * prediction whose outcome is not among its options is found here and not by an apprentice.
 */
export function simProblems<G extends Givens, M extends SimModel<G>>(
  sim: SimSpec<G, M> & TasksFile<G, M>,
  makeModel: () => M,
): readonly string[] {
  const model = makeModel();
  const keys = new Set(sim.controls.map(({ key }) => key));
  const strangers = [...keys].filter((key) => !(key in model.givens));
  if (strangers.length > 0) {
    return strangers.map((key) => `Control "${key}" is not a given of the model.`);
  }
  const problems = [...schemaProblems(linkSchema(sim, currentValues(sim, model)))];
  const known = (partial: Partial<G>, where: string): void => {
    for (const key of Object.keys(partial)) {
      if (!(key in model.givens)) problems.push(`${where}: "${key}" is not a given of the model.`);
    }
  };

  const { predict, tasks } = sim;
  const ids = predict.options.map(({ id }) => id);
  if (ids.length < 2) problems.push('A prediction needs at least two options.');
  if (new Set(ids).size !== ids.length) problems.push('Two options share an id.');
  for (const { id, why } of predict.options) {
    if (typeof why === 'string' && why.trim() === '')
      problems.push(`Option "${id}" has no explanation.`);
  }
  known(predict.start, 'The start of the run');
  known(predict.end, 'The end of the run');
  model.reset();
  model.apply(predict.start);
  model.apply(predict.end);
  const { option } = predict.outcome(model);
  if (!ids.includes(option)) problems.push(`The run ends in "${option}", which is not an option.`);

  if (tasks.length < 3) problems.push(`There are ${tasks.length} tasks; at least 3 are needed.`);
  const [first] = tasks;
  if (first && first.controls.length > 3) {
    problems.push(
      `The first task has ${first.controls.length} live controls; at most 3 are allowed.`,
    );
  }
  for (const task of tasks) {
    known(task.start, `Task "${task.id}"`);
    for (const key of task.controls) {
      if (!keys.has(key)) problems.push(`Task "${task.id}": there is no control "${key}".`);
    }
    if (task.controls.length === 0) problems.push(`Task "${task.id}" has no live control.`);
    const fresh = makeModel();
    fresh.apply(task.start);
    if (task.done(fresh)) problems.push(`Task "${task.id}" is done before anything is moved.`);
  }
  return problems;
}
