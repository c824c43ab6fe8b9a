import { useState } from 'preact/hooks';
import { useReady } from '../../ui/use-units.ts';
import { Offered } from './Offered.tsx';
import type { Retrieval, RetrievalProps } from './View.tsx';

interface OfferProps extends RetrievalProps {
  /** Questions in one round. */
  readonly count: number;
}

/**
 * The door to the questions. The player behind it is loaded when the reader presses start, so that
 * who only reads does not pay for it.
 */
export function Offer({ count, ...props }: OfferProps) {
  const ready = useReady();
  const [Player, setPlayer] = useState<typeof Retrieval | null>(null);
  const [failed, setFailed] = useState(false);
  const load = () => {
    setFailed(false);
    import('./View.tsx').then(
      // A function given to a setter would be called, so it is wrapped.
      (loaded) => setPlayer(() => loaded.Retrieval),
      () => setFailed(true),
    );
  };
  if (Player !== null) return <Player {...props} begun />;
  return (
    <div class="retrieval-panel">
      <h3>What stayed with you?</h3>
      <Offered count={count} total={props.questions.length} ready={ready} onStart={load} />
      {failed && (
        <p role="alert">
          The questions could not be loaded. Check that you are connected, then press start again.
        </p>
      )}
    </div>
  );
}
