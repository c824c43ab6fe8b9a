import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import { useReady } from '../../ui/use-units.ts';
import { ForCustomer } from './ForCustomer.tsx';
import { ForFile } from './ForFile.tsx';
import { words } from './paper-words.en.ts';
import { unjudgedWords } from './Repair.tsx';
import type { Sheet } from './sheet.ts';

type Which = 'both' | 'file' | 'customer';
const choices: readonly Which[] = ['both', 'file', 'customer'];

/** The two pages for paper, and the buttons that print them. */
export function OnPaper({ sheet }: { readonly sheet: Sheet }) {
  const which = useSignal<Which>('both');
  const ready = useReady();
  useEffect(() => {
    const after = () => (which.value = 'both');
    addEventListener('afterprint', after);
    return () => removeEventListener('afterprint', after);
  }, []);
  const why = sheet.readings.value.length === 0 ? '' : unjudgedWords(sheet);
  const print = (one: Which): void => {
    which.value = one;
    // Once the page has taken the choice in.
    setTimeout(() => globalThis.print());
  };
  return (
    <>
      <section class="job-part no-print" aria-labelledby="job-print-title">
        <h3 id="job-print-title">{words.title}</h3>
        <p class="muted">{words.how}</p>
        <p id="job-print-why" class="field-error">
          {why && words.unjudged(why)}
        </p>
        <p class="job-acts">
          {choices.map((one) => (
            <button
              key={one}
              type="button"
              aria-describedby="job-print-why"
              class={one === 'both' ? 'act' : 'quiet'}
              onClick={() => print(one)}
            >
              {words[one]}
            </button>
          ))}
        </p>
      </section>
      {ready && (
        <div class="print-only job-paper">
          {which.value !== 'customer' && <ForFile sheet={sheet} />}
          {which.value !== 'file' && <ForCustomer sheet={sheet} />}
        </div>
      )}
    </>
  );
}
