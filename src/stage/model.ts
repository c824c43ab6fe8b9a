/** The state of a meeting on the wall. Clock, chance and storage are handed in, so it runs in Node. */
import { computed, signal } from '@preact/signals';
import { paused, started, STOPPED, type Clock } from '../meeting/clock.ts';
import type { Command } from '../meeting/keys.ts';
import type { Meeting } from '../meeting/meeting.ts';
import {
  back,
  explained,
  isAnswered,
  lastPlace,
  next,
  sceneAt,
  START,
  stepAt,
  stepOfWhy,
  type Place,
} from '../meeting/steps.ts';
import { allHands, handsFor, withHand, withTyped, type Hands } from '../meeting/tally.ts';
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
  const clockHidden = signal(meeting.clockHidden ?? false);
  const open = signal<'code' | 'keys' | 'more' | null>(null);

  const scene = computed(() => sceneAt(meeting, place.value));
  const step = computed(() => stepAt(meeting, place.value));
  const handsAt = (index: number): Hands => {
    const there = meeting.scenes[index];
    return there?.kind === 'vote' ? handsFor(there.options.length, hands.value[index]) : [];
  };

  /** Why an option is wrong that nobody raised a hand for: it waits to be asked for. Where no hands were counted, any may have had some. */
  const isUnasked = ({ scene: index, step: at }: Place): boolean => {
    const there = meeting.scenes[index];
    if (there?.kind !== 'vote' || stepAt(meeting, { scene: index, step: at }) !== 'why')
      return false;
    const all = handsAt(index);
    return allHands(all) > 0 && explained(there, at).every((option) => all[option] === 0);
  };
  const following = computed(() => next(meeting, place.value, isUnasked));

  const go = (to: Place): void => {
    blank.value = false;
    open.value = null;
    place.value = to;
  };
  const count = (change: (now: Hands) => Hands): void => {
    const { scene: index } = place.peek();
    // What was voted stands once the answer is out.
    if (isAnswered(step.peek())) return;
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
        go(following.peek());
        return undefined;
      case 'back':
        go(back(meeting, place.peek(), isUnasked));
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
      case 'hand': {
        const { option, by } = command;
        const here = scene.peek();
        if (here?.kind !== 'vote') return undefined;
        const why = isAnswered(step.peek()) ? stepOfWhy(here, option) : undefined;
        if (why === undefined) count((hands) => withHand(hands, option, by));
        else go({ ...place.peek(), step: why });
        return undefined;
      }
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
    ...{
      meeting,
      channel,
      place,
      following,
      hands,
      clock,
      blank,
      clockHidden,
      open,
      scene,
      step,
      now,
      run,
    },
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
