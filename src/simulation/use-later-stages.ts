import { useRef, useState } from 'preact/hooks';
import type * as Stages from './later/index.ts';

export type LaterStages = typeof Stages;

export interface LaterLoader {
  /** Null until they are here. */
  readonly stages: LaterStages | null;
  readonly failed: boolean;
  /** Once is enough; asked again after a failure it tries again. */
  readonly load: () => Promise<LaterStages | null>;
}

/** Compare, tasks and your controls, fetched when they are wanted. */
export function useLaterStages(): LaterLoader {
  const [stages, setStages] = useState<LaterStages | null>(null);
  const [failed, setFailed] = useState(false);
  const asked = useRef<Promise<LaterStages | null> | null>(null);
  const fetchThem = async (): Promise<LaterStages | null> => {
    try {
      const loaded = await import('./later/index.ts');
      setStages(() => loaded);
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
