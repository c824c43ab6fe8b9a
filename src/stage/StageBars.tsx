import type { ComponentChildren } from 'preact';
import type { Command } from '../meeting/keys.ts';
import { ClockText } from './ClockText.tsx';
import type { StageModel } from './model.ts';
import { MoreMenu } from './MoreMenu.tsx';
import { words } from './words.en.ts';

interface StageBarsProps {
  readonly model: StageModel;
  readonly command: (command: Command) => void;
  /** What did not go, in a sentence; empty otherwise. */
  readonly said: string;
  readonly children: ComponentChildren;
}

/** Above the scene how far and how long, below it what a finger presses. */
export function StageBars({ model, command, said, children }: StageBarsProps) {
  const { meeting, place, clock, clockHidden } = model;
  const press = (what: Command, text: string) => (
    <button type="button" class="stage-button" onClick={() => command(what)}>
      {text}
    </button>
  );
  return (
    <>
      <header class="stage-head">
        <h1>{meeting.title}</h1>
        <span class="number">
          {words.progress({
            scene: String(place.value.scene + 1),
            of: String(meeting.scenes.length),
          })}
        </span>
        {!clockHidden.value && <ClockText clock={clock.value} minutes={meeting.minutes} />}
      </header>
      <div class="stage-wall">{children}</div>
      <footer class="stage-foot">
        {press({ do: 'back' }, words.back)}
        {press({ do: 'next' }, words.next)}
        <MoreMenu open={model.open}>
          {press({ do: 'full' }, words.full)}
          {press({ do: 'blank' }, words.blank)}
          {press({ do: 'code' }, words.code)}
          {press({ do: 'notes' }, words.notes)}
          {press({ do: 'pause' }, clock.value.since === null ? words.clock.go : words.clock.pause)}
          {press({ do: 'restart' }, words.clock.restart)}
          {press({ do: 'clock' }, clockHidden.value ? words.clock.show : words.clock.hide)}
          {press({ do: 'keys' }, words.keys)}
        </MoreMenu>
        {press({ do: 'leave' }, words.leave)}
        <p role="status">{said}</p>
        {said === '' && <p class="stage-quiet stage-hint">{words.hint}</p>}
      </footer>
    </>
  );
}
