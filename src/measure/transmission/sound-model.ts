import { signal } from '@preact/signals';
import type { TransmissionSheet } from '../../engine/index.ts';
import type { Answer, Ask } from '../../own-sheet/messages.ts';
import type { Sound } from '../../own-sheet/sound-car.ts';
import type { Working } from '../../ui/page-worker.ts';

export type SoundState =
  | { readonly kind: 'working' }
  | { readonly kind: 'sound'; readonly sound: Sound }
  | { readonly kind: 'failed' | 'stopped' };

/** Between the last key and the work. */
const QUIET_MS = 400;

type Start = (told: (answer: Answer) => void) => Working<Ask>;

/** The sound car of a sheet, worked out in a worker a moment after the last key. */
export function makeSound(start: () => Promise<Start>) {
  const state = signal<SoundState>({ kind: 'working' });
  let works: Promise<Working<Ask>> | undefined;
  let timer: ReturnType<typeof setTimeout> | undefined;
  let asked = 0;
  let answered = 0;

  const told = (answer: Answer): void => {
    answered += 1;
    if (answer.kind === 'stopped') {
      works = undefined;
      answered = asked;
      state.value = { kind: 'stopped' };
    } else if (answered < asked) return;
    else if (answer.kind === 'sound' || answer.kind === 'failed') state.value = answer;
  };

  async function work(sheet: TransmissionSheet): Promise<void> {
    asked += 1;
    works ??= start().then((ready) => ready(told));
    try {
      (await works).ask({ kind: 'sound', sheet });
    } catch {
      told({ kind: 'stopped' });
    }
  }

  return {
    state,
    ask: (sheet: TransmissionSheet): void => {
      clearTimeout(timer);
      timer = setTimeout(() => void work(sheet), QUIET_MS);
    },
    stop: (): void => {
      clearTimeout(timer);
      void works?.then(({ stop }) => stop()).catch(() => undefined);
    },
  };
}
export type SoundModel = ReturnType<typeof makeSound>;
