import { useEffect, useRef, useState } from 'preact/hooks';
import { waitBeforeSpeaking } from './throttle-text.ts';

interface LiveTextProps {
  /** The whole sentence as it stands now. */
  readonly text: string;
  /** Also show it; by default only screen readers get it. */
  readonly visible?: boolean;
}

/** A polite live region that speaks at most twice a second and never loses the last sentence. */
export function LiveText({ text, visible = false }: LiveTextProps) {
  const [spoken, setSpoken] = useState(visible ? text : '');
  const last = useRef(Number.NEGATIVE_INFINITY);
  const first = useRef(true);
  useEffect(() => {
    // What is on the page when it loads is read as part of the page, not announced.
    if (first.current) {
      first.current = false;
      return undefined;
    }
    const speak = () => {
      last.current = performance.now();
      setSpoken(text);
    };
    const timer = setTimeout(speak, waitBeforeSpeaking(last.current, performance.now()));
    return () => clearTimeout(timer);
  }, [text]);
  return (
    <>
      {visible && (
        <p class="live-text" aria-hidden="true">
          {text}
        </p>
      )}
      <p class="for-ears" role="status">
        {spoken}
      </p>
    </>
  );
}
