import type { AnswersRead } from '../storage/read-answers.ts';
import { words } from './words.en.ts';

/** What is wrong with what this browser keeps, in a sentence each; nothing else waits for it. */
export function Faults({ read }: { readonly read: AnswersRead | undefined }) {
  if (read === undefined) return null;
  const { status, damaged, answers } = read;
  return (
    <>
      {status !== 'ok' && <p class="today-fault">{words.store[status]}</p>}
      {damaged.length > 0 && (
        <p class="today-fault">{words.damaged({ count: String(damaged.length) })}</p>
      )}
      {answers.some(({ clockSetBack }) => clockSetBack) && <p class="today-fault">{words.clock}</p>}
    </>
  );
}
