import type { ComponentType } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { words } from './words.en.ts';

interface LaterProps<P extends object> {
  /** Fetches the component: `() => import('./Below.tsx').then(({ Below }) => Below)`. */
  readonly load: () => Promise<ComponentType<P>>;
  readonly props: P;
}

/** Pictures that nobody sees before the answer is out are fetched when it is. */
export function Later<P extends object>({ load, props }: LaterProps<P>) {
  const [Loaded, setLoaded] = useState<ComponentType<P> | null>(null);
  const [failed, setFailed] = useState(false);
  useEffect(() => {
    load().then(
      // A function given to a setter would be called, so it is wrapped.
      (component) => setLoaded(() => component),
      () => setFailed(true),
    );
  }, []);
  if (Loaded) return <Loaded {...props} />;
  return <Waiting what="pictures" failed={failed} />;
}

interface WaitingProps {
  readonly what: 'pictures' | 'controls';
  readonly failed: boolean;
}

/**
 * In the place of what is being fetched. What failed once stays failed in two of three browsers until the page is
 * loaded again; it then opens where it stood.
 */
export function Waiting({ what, failed }: WaitingProps) {
  return (
    <div class="sim-stage">
      <p role="status">{failed ? words.failed[what] : words.loading[what]}</p>
      {failed && (
        <button type="button" class="quiet" onClick={() => location.reload()}>
          {words.reload}
        </button>
      )}
    </div>
  );
}
