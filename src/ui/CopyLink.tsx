import { useRef, useState } from 'preact/hooks';
import { words } from './later/words.en.ts';

interface CopyLinkProps {
  /** The search string to put on the page's address; read at the moment of the press. */
  readonly search: () => string;
  readonly id: string;
  /** Where on the page the link should land; without it, at the top. */
  readonly anchor?: string | undefined;
  /** What the link leads to, where it is no state of a simulation. */
  readonly label?: string;
}

type State = 'idle' | 'copied' | 'by-hand';

/**
 * Copies a link to what is on the screen. Where the clipboard is barred (an old browser, a
 * page without https in the shop) the link appears in a field, selected, to copy by hand.
 */
export function CopyLink({ search, id, anchor, label = words.copy }: CopyLinkProps) {
  const [state, setState] = useState<State>('idle');
  const [link, setLink] = useState('');
  const field = useRef<HTMLInputElement>(null);

  const copy = async () => {
    const hash = anchor === undefined ? '' : `#${anchor}`;
    const text = `${location.origin}${location.pathname}${search()}${hash}`;
    setLink(text);
    try {
      await navigator.clipboard.writeText(text);
      setState('copied');
    } catch {
      setState('by-hand');
      requestAnimationFrame(() => field.current?.select());
    }
  };

  return (
    <div class="copy-link">
      <button type="button" class="quiet" onClick={() => void copy()}>
        {label}
      </button>
      {state === 'by-hand' && (
        <label class="copy-by-hand" for={`${id}-link`}>
          {words.byHand}
          <input ref={field} id={`${id}-link`} type="text" readOnly value={link} />
        </label>
      )}
      <span role="status">{state === 'copied' ? words.copied : ''}</span>
    </div>
  );
}
