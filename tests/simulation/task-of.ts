import type { Givens, SimModel, TaskSpec } from '../../src/simulation/sim-spec.ts';

/** The task of that name; a test about one that is gone must not pass in silence. */
export function taskOf<G extends Givens, M extends SimModel<G>>(
  tasks: readonly TaskSpec<G, M>[],
  id: string,
): TaskSpec<G, M> {
  const found = tasks.find((one) => one.id === id);
  if (found === undefined) throw new Error(`There is no task ${id}.`);
  return found;
}

/** The task of that name, and a model at its start. */
export function begun<G extends Givens, M extends SimModel<G>>(
  tasks: readonly TaskSpec<G, M>[],
  makeModel: () => M,
  id: string,
) {
  const task = taskOf(tasks, id);
  const model = makeModel();
  model.apply(task.start);
  return { task, model };
}
