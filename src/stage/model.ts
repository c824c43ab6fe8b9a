/** The state of a meeting on the wall. Clock, chance and storage are handed in, so it runs in Node. */
import { computed, signal } from '@preact/signals';
import { paused, started, STOPPED, type Clock } from '../meeting/clock.ts';
import type { Command } from '../meeting/keys.ts';
import type { Meeting } from '../meeting/meeting.ts';
import { back, lastPlace, next, sceneAt, START, stepAt, type Place } from '../meeting/steps.ts';
import { handsFor, withHand, withTyped, type Hands } from '../meeting/tally.ts';
import type { MeetingSession } from '../storage/meeting-session.ts';

export interface Surroundings {
  readonly meeting: Meeting;
  readonly now: () => number;
  readonly at?: Place | undefined;
  readonly kept?: MeetingSession | undefined;
  /** A name that no other meeting on this device has. */
  readonly channel: () => string;
}

/** What the stage does beside moving: asked of whoever mounts it. */
export type Outer = 'leave' | 'full' | 'notes';

/** What brings a blank wall back and does nothing else: a clicker has not meant to go on, and nothing opens unseen. */
const BRINGS_BACK = new Set<Command['do']>(['next', 'back', 'code', 'keys', 'leave']);

export const sessionKey = ({ id, scenes }: Meeting): string =>
  `${id} ${scenes.map((scene) => (scene.kind === 'vote' ? scene.options.length : 0)).join('.')}`;

export function stageModel({ meeting, now, at, kept, channel: named }: Surroundings) {
  // A second window keeps its line; hands and clock of the last time belong to a meeting that is gone on with.
  const channel = kept?.channel ?? named();
  const goneOnWith = at === undefined ? undefined : kept;
  const place = signal<Place>(at ?? START);
  const hands = signal<Readonly<Record<string, Hands>>>(goneOnWith?.hands ?? {});
  const clock = signal<Clock>(goneOnWith?.clock ?? started(STOPPED, now()));
  const blank = signal(false);
  const clockHidden = signal(false);
  const open = signal<'code' | 'keys' | 'more' | null>(null);

  const scene = computed(() => sceneAt(meeting, place.value));
  const step = computed(() => stepAt(meeting, place.value));
  const handsAt = (index: number): Hands => {
    const there = meeting.scenes[index];
    return there?.kind === 'vote' ? handsFor(there.options.length, hands.value[index]) : [];
  };

  const go = (to: Place): void => {
    blank.value = false;
    open.value = null;
    place.value = to;
  };
  const count = (change: (now: Hands) => Hands): void => {
    const { scene: index } = place.peek();
    // What was voted stands once the answer is out.
    if (step.peek() === 'answer') return;
    hands.value = { ...hands.peek(), [index]: change(handsAt(index)) };
  };

  /** Does what it can; the rest is for whoever has the window. */
  function run(command: Command): Outer | undefined {
    if (blank.peek() && BRINGS_BACK.has(command.do)) {
      blank.value = false;
      return undefined;
    }
    switch (command.do) {
      case 'next':
        go(next(meeting, place.peek()));
        return undefined;
      case 'back':
        go(back(meeting, place.peek()));
        return undefined;
      case 'first':
        go(START);
        return undefined;
      case 'last':
        go(lastPlace(meeting));
        return undefined;
      case 'blank':
        blank.value = !blank.peek();
        if (open.peek() === 'more') open.value = null;
        return undefined;
      case 'pause': {
        const running = clock.peek();
        clock.value = running.since === null ? started(running, now()) : paused(running, now());
        return undefined;
      }
      case 'restart':
        clock.value = clock.peek().since === null ? STOPPED : started(STOPPED, now());
        return undefined;
      case 'clock':
        clockHidden.value = !clockHidden.peek();
        return undefined;
      case 'code':
      case 'keys':
        open.value = open.peek() === command.do ? null : command.do;
        return undefined;
      case 'hand':
        if (scene.peek()?.kind === 'vote')
          count((hands) => withHand(hands, command.option, command.by));
        return undefined;
      case 'leave':
        if (open.peek() === null) return 'leave';
        open.value = null;
        return undefined;
      case 'full':
      case 'notes':
        return command.do;
    }
  }

  /** What outlives a reload. */
  const session = computed((): MeetingSession => ({
    meeting: sessionKey(meeting),
    channel,
    hands: hands.value,
    clock: clock.value,
  }));

  return {
    ...{ meeting, channel, place, hands, clock, blank, clockHidden, open, scene, step, now, run },
    /** A key at the wall: under the black nobody sees what is counted. */
    press: (command: Command): Outer | undefined =>
      blank.peek() && command.do === 'hand' ? undefined : run(command),
    handsHere: computed(() => handsAt(place.value.scene)),
    typeHands: (option: number, typed: number): void =>
      count((hands) => withTyped(hands, option, typed)),
    session,
    /** What leaving keeps: begun anew by mistake and left on its first scene, it has the hands of before. */
    keptOnLeaving: (): MeetingSession => {
      const none = Object.keys(hands.peek()).length === 0;
      const now = session.peek();
      return none && place.peek().scene === 0 ? { ...now, hands: kept?.hands ?? {} } : now;
    },
  };
}
export type StageModel = ReturnType<typeof stageModel>;
