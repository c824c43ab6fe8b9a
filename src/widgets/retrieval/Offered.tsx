interface OfferedProps {
  readonly count: number;
  readonly total: number;
  readonly ready: boolean;
  readonly onStart: () => void;
}

/** What a round of questions is, before it begins. */
export function Offered({ count, total, ready, onStart }: OfferedProps) {
  return (
    <>
      <p>
        {count} of the {total} questions of this lesson. The lesson goes out of sight until you are
        done; that is what makes it stay with you. Say how sure you are before you check. Nothing is
        kept or sent.
      </p>
      <button type="button" class="act" disabled={!ready} onClick={onStart}>
        Cover the lesson and start
      </button>
    </>
  );
}
