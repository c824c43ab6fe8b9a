import { effect } from '@preact/signals';
import { useEffect, useRef } from 'preact/hooks';
import type { Command } from '../meeting/keys.ts';
import type { StageModel } from './model.ts';
import { channelName, snapshotOf, type ToNotes, type ToStage } from './notes-line.ts';

/** Tells the window with the notes where the meeting stands, and does what is asked there. */
export function useLine(model: StageModel, command: (command: Command) => void): void {
  const asked = useRef(command);
  asked.current = command;
  useEffect(() => {
    if (typeof BroadcastChannel === 'undefined') return undefined;
    const line = new BroadcastChannel(channelName(model.channel));
    const say = (message: ToNotes): void => line.postMessage(message);
    const tell = (): void => say({ say: 'now', snapshot: snapshotOf(model) });
    line.onmessage = ({ data }: MessageEvent<ToStage>) => {
      if (data.ask === 'now') tell();
      else asked.current(data.command);
    };
    const stop = effect(tell);
    // A tab that is closed takes nothing down; after a reload the wall speaks again by itself.
    const over = (): void => say({ say: 'over', scene: model.place.peek().scene });
    addEventListener('pagehide', over);
    return () => {
      stop();
      removeEventListener('pagehide', over);
      over();
      line.close();
    };
  }, [model]);
}
