import { useState } from 'preact/hooks';
import { useReady } from '../../ui/use-units.ts';
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
      <p>
        {count} of the {props.questions.length} questions of this lesson. The lesson goes out of
        sight until you are done; that is what makes it stay with you. Say how sure you are before
        you check. Nothing is kept or sent.
      </p>
      <button type="button" class="act" disabled={!ready} onClick={load}>
        Cover the lesson and start
      </button>
      {failed && (
        <p role="alert">
          The questions could not be loaded. Check that you are connected, then press start again.
        </p>
      )}
    </div>
  );
}
