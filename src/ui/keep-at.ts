import { signal } from '@preact/signals';
import type { Answer } from '../storage/answer.ts';
import { keepAnswer, type KeepStatus } from '../storage/answers.ts';

type Fault = Exclude<KeepStatus, 'ok'>;

/** By the place where an answer was given, why the last one there could not be kept. */
const faults = signal<Readonly<Record<string, Fault | undefined>>>({});

export const faultAt = (place: string): Fault | undefined => faults.value[place];

/** Keeps an answer while the lesson goes on; NotKept says so at the place if it could not be kept. */
export async function keepAt(
  place: string,
  answer: Answer,
  keep: (answer: Answer) => Promise<KeepStatus> = keepAnswer,
): Promise<void> {
  const put = (fault: Fault | undefined): void => {
    faults.value = { ...faults.peek(), [place]: fault };
  };
  put(undefined);
  const status = await keep(answer);
  if (status !== 'ok') put(status);
}
