import { useRef, useState } from 'preact/hooks';
import type * as Stages from './later/index.ts';
import type { Givens, SimModel, TasksFile } from './sim-spec.ts';

export type LaterStages<G extends Givens, M extends SimModel<G>> = typeof Stages & TasksFile<G, M>;

export interface LaterLoader<G extends Givens, M extends SimModel<G>> {
  /** Null until they are here. */
  readonly stages: LaterStages<G, M> | null;
  readonly failed: boolean;
  /** Once is enough; asked again after a failure it tries again. */
  readonly load: () => Promise<LaterStages<G, M> | null>;
}

/** Compare, tasks and your controls, fetched when they are wanted. */
export function useLaterStages<G extends Givens, M extends SimModel<G>>(
  loadTasks: () => Promise<TasksFile<G, M>>,
): LaterLoader<G, M> {
  const [stages, setStages] = useState<LaterStages<G, M> | null>(null);
  const [failed, setFailed] = useState(false);
  const asked = useRef<Promise<LaterStages<G, M> | null> | null>(null);
  const fetchThem = async (): Promise<LaterStages<G, M> | null> => {
    try {
      const [shared, { tasks }] = await Promise.all([import('./later/index.ts'), loadTasks()]);
      const loaded = { ...shared, tasks };
      setStages(loaded);
      setFailed(false);
      return loaded;
    } catch {
      asked.current = null;
      setFailed(true);
      return null;
    }
  };
  return { stages, failed, load: () => (asked.current ??= fetchThem()) };
}
