import { QUESTIONS } from '../cases/lists.ts';
import { TALK_MINUTES } from '../cases/visit.ts';
import type { CaseModel } from './model.ts';
import { words } from './words.en.ts';

/** The conversation: each question with its answer once it was asked. */
export function Talk({ model }: { readonly model: CaseModel }) {
  const { ask, questions } = words;
  const { bench } = model;
  return (
    <section class="case-part case-talk" aria-label={ask.title}>
      <h3>{ask.title}</h3>
      <p class="muted">{ask.note({ minutes: String(TALK_MINUTES) })}</p>
      <ul class="case-list">
        {QUESTIONS.map((what) =>
          model.has({ kind: 'ask', what }) ? (
            <li key={what}>
              <span class="muted">{questions[what]}</span> <q>{bench.asked[what]}</q>
            </li>
          ) : (
            <li key={what}>
              <button type="button" class="quiet" onClick={() => model.take({ kind: 'ask', what })}>
                {questions[what]}
              </button>
            </li>
          ),
        )}
      </ul>
    </section>
  );
}
