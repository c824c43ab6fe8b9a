import { effect } from '@preact/signals';
import { useEffect, useLayoutEffect, useMemo, useState } from 'preact/hooks';
import type { Command } from '../meeting/keys.ts';
import type { Meeting } from '../meeting/meeting.ts';
import { hashOf, readHash, type Place } from '../meeting/steps.ts';
import { readSession, writeSession } from '../storage/meeting-session.ts';
import { putAddress, putOwn, putPlace } from './address.ts';
import { Blank } from './Blank.tsx';
import { Code } from './Code.tsx';
import { KeyList } from './KeyList.tsx';
import { sessionKey, stageModel, type StageModel } from './model.ts';
import { SceneView } from './SceneView.tsx';
import { StageBars } from './StageBars.tsx';
import { addressNow, lessonOf, searchNow } from './state-now.ts';
import { commandFor } from './steer.ts';
import { stayAwake } from './stay-awake.ts';
import { useLine } from './use-line.ts';
import { words } from './words.en.ts';

export interface StageProps {
  readonly meeting: Meeting;
  /** The folder that the site stands in. */
  readonly base: string;
  /** Of a meeting of one's own: what its address has behind the ?. */
  readonly own?: string | undefined;
  /** Where it was left, to go on there; read from the address otherwise. */
  readonly at?: Place | undefined;
  /** `search`: the state that a simulation on the wall stands at, as an address has it. */
  readonly onLeave: (at: Place, search?: string) => void;
}

const made = ({ meeting, at }: StageProps): StageModel =>
  stageModel({
    meeting,
    now: Date.now,
    at: readHash(meeting, at ? hashOf(at) : location.hash),
    kept: readSession(sessionKey(meeting)),
    channel: () => crypto.getRandomValues(new Uint32Array(2)).join('-'),
  });

/** The wall: one scene at a time, steered by keys, a clicker, a finger or the second window. */
export function Stage(props: StageProps) {
  const { base, onLeave, own } = props;
  const model = useMemo(() => made(props), []);
  const [blocked, setBlocked] = useState(false);
  const [notFull, setNotFull] = useState(false);

  const openNotes = (): void => {
    const address = `${base.replace(/\/$/, '')}/meetings/notes/#${model.channel}`;
    setBlocked(
      window.open(address, `notes-${model.channel}`, 'popup,width=720,height=800') === null,
    );
  };
  const goFull = async (): Promise<void> => {
    try {
      if (document.fullscreenElement) await document.exitFullscreen();
      else await document.documentElement.requestFullscreen();
      setNotFull(false);
    } catch {
      setNotFull(true);
    }
  };
  const leave = (): void => {
    if (document.fullscreenElement) void document.exitFullscreen();
    const search = searchNow(model);
    putOwn('');
    putPlace('');
    writeSession(model.keptOnLeaving());
    onLeave(model.place.peek(), search);
  };
  const command = (asked: Command, run = model.run): void => {
    const outer = run(asked);
    if (outer === 'leave') leave();
    if (outer === 'full') void goFull();
    if (outer === 'notes') openNotes();
  };
  useLine(model, command);

  // A press counts from the moment that the wall is there.
  useLayoutEffect(() => {
    if (own) putOwn(own);
    document.documentElement.classList.add('on-stage');
    const onKey = (event: KeyboardEvent): void => {
      const asked = commandFor(event);
      if (!asked) return;
      event.preventDefault();
      event.stopPropagation();
      // Where the browser does not keep it to itself, Escape means the full screen alone.
      if (asked.do === 'leave' && document.fullscreenElement) void document.exitFullscreen();
      else command(asked, model.press);
    };
    // Before the controls of a simulation: a clicker goes on wherever the focus is.
    addEventListener('keydown', onKey, { capture: true });
    return () => {
      document.documentElement.classList.remove('on-stage');
      removeEventListener('keydown', onKey, { capture: true });
    };
  }, []);
  useEffect(() => {
    const stops = [
      effect(() => putPlace(hashOf(model.place.value))),
      effect(() => writeSession(model.session.value)),
    ];
    const sleep = stayAwake();
    return () => {
      for (const stop of stops) stop();
      putAddress('');
      sleep();
    };
  }, []);

  const open = model.open.value;
  return (
    <section class="stage" data-busy aria-label={words.stage(model.meeting.title)}>
      <StageBars model={model} command={command} said={said(blocked, notFull)}>
        <SceneView key={model.place.value.scene} model={model} base={base} />
      </StageBars>
      {(open === 'code' || open === 'keys') && (
        <div class="stage-over">
          {open === 'code' ? (
            <Code
              address={addressNow(model, base, own !== undefined)}
              lesson={lessonOf(model.scene.value) !== undefined}
            />
          ) : (
            <KeyList />
          )}
          <button type="button" class="stage-button" onClick={() => command({ do: 'leave' })}>
            {words.close}
          </button>
        </div>
      )}
      {model.blank.value && <Blank show={() => command({ do: 'blank' })} />}
    </section>
  );
}

const said = (blocked: boolean, notFull: boolean): string =>
  blocked ? words.blocked : notFull ? words.notFull : '';
