/** A right and a wrong answer to any question. */
import type { Asked } from '../../src/quiz/asked.ts';
import type { Given } from '../../src/quiz/grade.ts';

const chosen = (...ids: readonly string[]): Given => ({ kind: 'chosen', ids });

export function best(q: Asked): Given {
  switch (q.kind) {
    case 'number':
      return { kind: 'typed', text: String(q.value), system: 'si' };
    case 'single':
    case 'several':
      return chosen(...q.options.filter((o) => o.correct).map((o) => o.id));
    case 'order':
      return chosen(...[...q.steps].sort((a, b) => a.rank - b.rank).map(({ id }) => id));
    case 'match':
      return chosen(...q.pairs.map(({ id }) => `${id}:${id}`));
    case 'spot':
      return chosen(...q.answers.slice(0, 1));
  }
}

export function worst(q: Asked): Given {
  switch (q.kind) {
    case 'number':
      return { kind: 'typed', text: '9999', system: 'si' };
    case 'single':
    case 'several':
      return chosen(
        ...q.options
          .filter((o) => !o.correct)
          .map((o) => o.id)
          .slice(0, 1),
      );
    case 'order':
      return chosen(...[...q.steps].sort((a, b) => b.rank - a.rank).map(({ id }) => id));
    case 'match': {
      const ids = q.pairs.map(({ id }) => id);
      return chosen(...ids.map((id, i) => `${id}:${ids[(i + 1) % ids.length] ?? ''}`));
    }
    case 'spot':
      return chosen(
        ...q.steps
          .map(({ id }) => id)
          .filter((id) => !q.answers.includes(id))
          .slice(0, 1),
      );
  }
}
