import { useEffect, useRef, useState } from 'preact/hooks';
import type { Command } from '../meeting/keys.ts';
import { isAnswered } from '../meeting/steps.ts';
import { WordsText } from '../widgets/retrieval/WordsText.tsx';
import { useReady } from '../ui/use-units.ts';
import { ClockText } from './ClockText.tsx';
import { channelName, type Snapshot, type ToNotes, type ToStage } from './notes-line.ts';
import { words as page } from './page-words.en.ts';
import { commandFor } from './steer.ts';

const words = page.notesWindow;

/** The stage may be loading itself; until it has answered it is asked again [ms]. */
const ASK_MS = 700;
/** What a key in this window may do: what is about this window stays here. */
const HERE = new Set<Command['do']>(['leave', 'full', 'notes', 'keys', 'code']);

/** What the foreman sees: the notes, what comes next, and the wall at his fingers. */
export function NotesWindow() {
  const [now, setNow] = useState<Snapshot | string>(words.waiting);
  const ready = useReady();
  const line = useRef<BroadcastChannel>();
  const command = (asked: Command): void =>
    line.current?.postMessage({ ask: 'do', command: asked } satisfies ToStage);

  useEffect(() => {
    if (typeof BroadcastChannel === 'undefined') {
      setNow(words.none);
      return undefined;
    }
    const opened = new BroadcastChannel(channelName(location.hash.slice(1)));
    line.current = opened;
    let heard = false;
    const ask = (): void => {
      if (!heard) opened.postMessage({ ask: 'now' } satisfies ToStage);
    };
    opened.onmessage = ({ data }: MessageEvent<ToNotes>) => {
      heard = data.say === 'now';
      setNow(data.say === 'now' ? data.snapshot : words.over(String(data.scene + 1)));
    };
    const onKey = (event: KeyboardEvent): void => {
      const asked = commandFor(event);
      if (!asked || HERE.has(asked.do)) return;
      event.preventDefault();
      command(asked);
    };
    ask();
    const timer = setInterval(ask, ASK_MS);
    addEventListener('keydown', onKey);
    return () => {
      clearInterval(timer);
      removeEventListener('keydown', onKey);
      opened.close();
    };
  }, []);

  return (
    <div class="notes-window" data-ready={ready}>
      {typeof now === 'string' ? <p role="status">{now}</p> : <Notes now={now} command={command} />}
    </div>
  );
}

interface NotesProps {
  readonly now: Snapshot;
  readonly command: (command: Command) => void;
}

function Notes({ now, command }: NotesProps) {
  const { next, blank, clock } = now;
  return (
    <>
      <p class="notes-place">
        <span>{words.scene({ scene: String(now.scene + 1), of: String(now.scenes) })}</span>
        <ClockText clock={clock} minutes={now.minutes} />
      </p>
      <h2>{now.heading}</h2>
      {now.wall.length > 0 && (
        <p class="notes-wall">
          {words.wall}{' '}
          {now.wall.map((line, i) => (
            <span key={i}>
              <WordsText words={line} />{' '}
            </span>
          ))}
        </p>
      )}
      <p class="notes-text">
        <WordsText words={now.notes} />
      </p>
      {now.votes.length > 0 && (
        <ol class="notes-votes">
          {now.votes.map((vote, i) => (
            <li key={i}>
              <Vote {...{ vote, command }} option={i} out={isAnswered(now.step)} />
            </li>
          ))}
        </ol>
      )}
      <p class="notes-next">
        {next === null
          ? words.last
          : 'heading' in next
            ? words.next(next.heading)
            : words.nextStep[next.step]}
      </p>
      <div class="notes-buttons">
        <button type="button" class="act" onClick={() => command({ do: 'next' })}>
          {words.forward}
        </button>
        <button type="button" class="quiet" onClick={() => command({ do: 'back' })}>
          {words.backward}
        </button>
        <button type="button" class="quiet" onClick={() => command({ do: 'blank' })}>
          {blank ? words.unblank : words.blank}
        </button>
        <button type="button" class="quiet" onClick={() => command({ do: 'pause' })}>
          {clock.since === null ? words.go : words.pause}
        </button>
        <button type="button" class="quiet" onClick={() => command({ do: 'restart' })}>
          {words.restart}
        </button>
      </div>
    </>
  );
}

interface VoteProps extends Pick<NotesProps, 'command'> {
  readonly vote: Snapshot['votes'][number];
  readonly option: number;
  /** The answer stands on the wall, so no hand counts any more. */
  readonly out: boolean;
}

function Vote({ vote, option, out, command }: VoteProps) {
  const name = String(option + 1);
  const hand = (by: 1 | -1): void => command({ do: 'hand', option, by });
  return (
    <>
      <div class="notes-vote">
        <span>
          <WordsText words={vote.words} />
          {vote.correct && ` (${words.right})`}
        </span>
        <strong>{words.hands(String(vote.hands))}</strong>
        {vote.told === undefined && (
          <button
            type="button"
            class="quiet"
            aria-label={words.take(name)}
            // Not `disabled`: the answer may come while it has the focus.
            aria-disabled={out}
            onClick={() => {
              if (!out) hand(-1);
            }}
          >
            −
          </button>
        )}
        {/* Where the wall tells one why at a time, the same button asks for it once no hand counts any more. */}
        <button
          type="button"
          class="quiet"
          aria-label={vote.told === undefined ? words.add(name) : words.whyOf(name)}
          aria-disabled={out && vote.told === undefined}
          aria-pressed={vote.told}
          onClick={() => hand(1)}
        >
          {vote.told === undefined ? '+' : words.why}
        </button>
      </div>
      {vote.why.length > 0 && (
        <p class="notes-why">
          <WordsText words={vote.why} />
        </p>
      )}
    </>
  );
}
