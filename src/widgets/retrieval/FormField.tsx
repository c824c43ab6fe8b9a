/**
 * The answer to a question in which one arranges, pairs or points. How that looks is loaded when the first such question is
 * among those to be asked: most rounds have none.
 */
import { useEffect, useState } from 'preact/hooks';
import type { Asked, AskedForm } from '../../quiz/asked.ts';
import type * as FormsScript from './forms/index.ts';
import type { FormProps } from './form-props.ts';
import { words } from './player/words.en.ts';

export const isForm = (asked: Asked): asked is AskedForm => {
  switch (asked.kind) {
    case 'order':
    case 'match':
    case 'spot':
      return true;
    case 'single':
    case 'several':
    case 'number':
      return false;
  }
};

type Forms = typeof FormsScript;
let loaded: Forms | undefined;

async function load(): Promise<Forms> {
  loaded ??= await import('./forms/index.ts');
  return loaded;
}

/** Fetched while an earlier question is being read. If it does not come, its own question says so. */
export function preloadForms(questions: readonly Asked[]): void {
  if (questions.some(isForm)) void load().catch(() => undefined);
}

export function FormField(props: FormProps) {
  const [forms, setForms] = useState<Forms | 'missing' | undefined>(loaded);
  const [tries, setTries] = useState(0);
  useEffect(() => {
    if (forms === undefined) load().then(setForms, () => setForms('missing'));
  }, [tries]);
  if (forms === undefined) return <p role="status">{words.loadingForm}</p>;
  if (forms !== 'missing') return <forms.Form {...props} />;
  return (
    <>
      <p role="alert">{words.formMissing}</p>
      <button
        type="button"
        class="quiet"
        onClick={() => {
          setForms(undefined);
          setTries(tries + 1);
        }}
      >
        {words.tryAgain}
      </button>
    </>
  );
}
