import type { ComponentType } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import type { Meeting } from '../meeting/meeting.ts';
import { readHash, type Place } from '../meeting/steps.ts';
import { useReady } from '../ui/use-units.ts';
import type { StageProps } from './Stage.tsx';
import { words } from './page-words.en.ts';

interface StartProps {
  readonly meeting: Meeting;
  readonly base: string;
}

/** The button that opens the stage; an address with a scene in it opens it by itself. */
export function Start({ meeting, base }: StartProps) {
  const [Stage, setStage] = useState<ComponentType<StageProps> | null>(null);
  const [state, setState] = useState<'rest' | 'loading' | 'failed'>('rest');
  const [left, setLeft] = useState<Place | undefined>();
  const [at, setAt] = useState<Place | undefined>();
  const ready = useReady();
  const open = (from?: Place): void => {
    setAt(from);
    setState('loading');
    import('./Stage.tsx').then(
      (came) => {
        setStage(() => came.Stage);
        setState('rest');
      },
      () => setState('failed'),
    );
  };
  useEffect(() => {
    if (readHash(meeting, location.hash)) open();
  }, []);
  if (Stage) {
    const onLeave = (place: Place): void => {
      setLeft(place);
      setStage(null);
    };
    return <Stage {...{ meeting, base, at, onLeave }} />;
  }
  return (
    <p class="meeting-start no-print" data-ready={ready}>
      {left && (
        <>
          <button type="button" class="act" onClick={() => open(left)}>
            {words.goOn(String(left.scene + 1))}
          </button>{' '}
        </>
      )}
      <button type="button" class={left ? 'quiet' : 'act'} onClick={() => open()}>
        {left ? words.startOver : words.start}
      </button>{' '}
      <button type="button" class="quiet" onClick={() => print()}>
        {words.print}
      </button>
      <span role="status">
        {state === 'loading' && words.loading}
        {state === 'failed' && words.failed}
      </span>
    </p>
  );
}
