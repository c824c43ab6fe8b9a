import type { Passage } from '../../quiz/asked.ts';

/** Question text with its amounts in both unit systems; the style sheet shows the reader's. */
export function WordsText({ words }: { readonly words: Passage }) {
  return (
    <>
      {words.map((piece, i) =>
        typeof piece === 'string' ? (
          piece
        ) : (
          <span key={i} data-amount={piece.amount}>
            {piece.si === piece.us ? (
              piece.si
            ) : (
              <>
                <span class="number u-si">{piece.si}</span>
                <span class="number u-us">{piece.us}</span>
              </>
            )}
          </span>
        ),
      )}
    </>
  );
}
