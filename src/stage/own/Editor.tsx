import { useSignal } from '@preact/signals';
import type { ComponentType } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import type { Meeting } from '../../meeting/meeting.ts';
import { lacking, shownOf, type Lacking } from '../../meeting/own.ts';
import { printOwnLink } from '../../meeting/own-link.ts';
import type { Place } from '../../meeting/steps.ts';
import {
  LONGEST,
  MOST_SCENES,
  type OwnMeeting,
  type OwnPlan,
  type OwnScene,
} from '../../storage/meetings/own-meeting.ts';
import { saveFile } from '../../ui/save-file.ts';
import type { StageProps } from '../Stage.tsx';
import { AddScene } from './AddScene.tsx';
import { moved, type MeetingsModel } from './model.ts';
import { SceneForm } from './SceneForm.tsx';
import type { OfSite } from './of-site.ts';
import { words } from './words.en.ts';

const { editor } = words;

interface EditorProps {
  readonly base: string;
  readonly site: OfSite;
  readonly meetings: MeetingsModel;
  readonly meeting: OwnMeeting;
  readonly startNow: boolean;
  readonly close: () => void;
}

/** One meeting being put together. Every change is kept a moment later. */
export function Editor(props: EditorProps) {
  const { base, site, meetings, meeting, close } = props;
  const plan = meeting.plan.value;
  const [shown, setShown] = useState<Meeting | null>(null);
  const [Stage, setStage] = useState<ComponentType<StageProps> | null>(null);
  const [left, setLeft] = useState<Place | undefined>();
  const [at, setAt] = useState<Place | undefined>();
  const [said, setSaid] = useState('');
  const [link, setLink] = useState('');
  const undo = useSignal<{ readonly scene: OwnScene; readonly at: number } | null>(null);
  const rewrite = (change: Partial<OwnPlan>): void =>
    meetings.rewrite(meeting, { ...plan, ...change });
  const put = (scenes: readonly OwnScene[]): void => rewrite({ scenes: [...scenes] });

  const start = async (from?: Place): Promise<void> => {
    setAt(from);
    setSaid(editor.startLoading);
    await meetings.keep();
    const came = await import('./begin.ts').catch(() => undefined);
    if (!came) {
      setSaid(editor.startFailed);
      return;
    }
    const questions = await came.questionsFor(base, plan);
    if (!questions) {
      setSaid(editor.questionsFailed);
      return;
    }
    setShown(shownOf(meeting.id, plan, questions));
    setStage(() => came.Stage);
    setSaid('');
  };
  useEffect(() => {
    if (props.startNow) void start();
  }, []);

  const share = async (): Promise<void> => {
    const text = printOwnLink(location.origin + location.pathname, plan);
    if (text === undefined) {
      setSaid(editor.tooLong);
      return;
    }
    try {
      await navigator.clipboard.writeText(text);
      setSaid(editor.shared);
    } catch {
      setLink(text);
    }
  };

  if (Stage && shown) {
    return (
      <Stage
        meeting={shown}
        base={base}
        own={`?own=${meeting.id}`}
        at={at}
        onLeave={(place) => {
          setLeft(place);
          setStage(null);
          history.replaceState(null, '', `${location.pathname}#${meeting.id}`);
        }}
      />
    );
  }
  const missing = lacking(plan);
  return (
    <>
      <p>
        <button type="button" class="quiet" onClick={close}>
          {editor.close}
        </button>
      </p>
      <label for="own-title">{editor.title}</label>
      <input
        id="own-title"
        type="text"
        autoComplete="off"
        maxLength={LONGEST.title}
        value={plan.title}
        onInput={({ currentTarget }) => rewrite({ title: currentTarget.value })}
      />
      <Minutes minutes={plan.minutes} put={(minutes) => rewrite({ minutes })} />
      <ol class="own-scenes">
        {plan.scenes.map((scene, index) => (
          <li key={index}>
            <SceneForm
              base={base}
              site={site}
              scene={scene}
              index={index}
              last={index === plan.scenes.length - 1}
              put={(changed) => put(plan.scenes.with(index, changed))}
              move={(by) => put(moved(plan.scenes, index, by))}
              remove={() => {
                undo.value = { scene, at: index };
                put(plan.scenes.toSpliced(index, 1));
              }}
            />
          </li>
        ))}
      </ol>
      {undo.value && plan.scenes.length < MOST_SCENES && (
        <p>
          <button
            type="button"
            class="quiet"
            onClick={() => {
              const { scene, at } = undo.value ?? {};
              if (scene) put(plan.scenes.toSpliced(at ?? 0, 0, scene));
              undo.value = null;
            }}
          >
            {editor.undo}
          </button>
        </p>
      )}
      <AddScene
        base={base}
        site={site}
        full={plan.scenes.length >= MOST_SCENES}
        add={(scene) => put([...plan.scenes, scene])}
      />
      {missing.length > 0 && (
        <div class="own-lacks">
          <p>{editor.lacks}</p>
          <ul>
            {missing.map((one, i) => (
              <li key={i}>{sentenceOf(one)}</li>
            ))}
          </ul>
        </div>
      )}
      <p class="own-go">
        {left && (
          <button
            type="button"
            class="act"
            disabled={missing.length > 0}
            onClick={() => void start(left)}
          >
            {editor.goOn(String(left.scene + 1))}
          </button>
        )}
        <button
          type="button"
          class={left ? 'quiet' : 'act'}
          disabled={missing.length > 0}
          onClick={() => void start()}
        >
          {left ? editor.startOver : editor.start}
        </button>{' '}
        <button type="button" class="quiet" onClick={() => void share()}>
          {editor.share}
        </button>{' '}
        <button
          type="button"
          class="quiet"
          onClick={() => saveFile('shop-meeting.json', meetings.fileOf(meeting))}
        >
          {editor.saveOne}
        </button>
      </p>
      <p role="status">{said}</p>
      {link !== '' && (
        <label>
          {editor.shareByHand}
          <input type="text" readOnly value={link} />
        </label>
      )}
    </>
  );
}

function sentenceOf({ scene, what }: Lacking): string {
  const said = words.lacking[what];
  return typeof said === 'string' ? said : said(String((scene ?? 0) + 1));
}

interface MinutesProps {
  readonly minutes: number;
  readonly put: (minutes: number) => void;
}

function Minutes({ minutes, put }: MinutesProps) {
  const wrong = useSignal(false);
  return (
    <>
      <label for="own-minutes">{editor.minutes}</label>
      <input
        id="own-minutes"
        type="text"
        inputMode="numeric"
        defaultValue={String(minutes)}
        aria-invalid={wrong.value}
        aria-describedby="own-minutes-wrong"
        onInput={({ currentTarget }) => {
          const typed = Number(currentTarget.value);
          wrong.value = !Number.isInteger(typed) || typed < 1 || typed > 180;
          if (!wrong.value) put(typed);
        }}
      />
      <p id="own-minutes-wrong" class="field-error" role="alert">
        {wrong.value && editor.minutesWrong}
      </p>
    </>
  );
}
