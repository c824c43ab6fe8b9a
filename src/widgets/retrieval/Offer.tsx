import { useState } from 'preact/hooks';
import { useReady } from '../../ui/use-units.ts';
import { fetchQuestions } from './fetch-questions.ts';
import type { OfferWords } from './offer-words.ts';
import type { Opened } from './player.ts';

export interface OfferProps {
  readonly lesson: string;
  /** Where the questions lie. */
  readonly address: string;
  readonly words: OfferWords;
}

interface Waiting {
  readonly way: 'start' | 'loading';
  readonly sentence?: string;
}

/**
 * The door to the questions. They and what asks them are loaded when the reader presses start, so
 * that who only reads does not pay for them.
 */
export function Offer({ lesson, address, words }: OfferProps) {
  const ready = useReady();
  const [state, setState] = useState<Opened | Waiting>({ way: 'start' });
  if ('set' in state) return <state.Player {...state.set} left={state.left} begun />;
  const { way, sentence } = state;
  const press = () => {
    if (way === 'reload') location.reload();
    else if (way !== 'loading') {
      setState({ way: 'loading', sentence: words.loading });
      void fetchQuestions(address, lesson, words).then(setState);
    }
  };
  return (
    <div class="retrieval-panel">
      <h3>{words.head}</h3>
      <p>{words.intro}</p>
      <button
        type="button"
        class="act"
        disabled={!ready}
        // Not `disabled` while it loads: that would throw the focus to the top of the page.
        aria-disabled={way === 'loading'}
        onClick={press}
      >
        {words[way]}
      </button>
      <p role="status">{sentence}</p>
    </div>
  );
}
