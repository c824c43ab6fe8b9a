import { effect } from '@preact/signals';
import { useLayoutEffect } from 'preact/hooks';
import type { Asked } from '../../quiz/asked.ts';
import { gradedAgain, isBlank } from '../../quiz/rehearsal/standing.ts';
import { draftKeeper } from '../../storage/draft.ts';
import { units } from '../../ui/units-signal.ts';
import type { RetrievalModel } from './model.ts';

/** What is ticked or typed and not checked yet is there again after a reload. */
export function useDraft(model: RetrievalModel, asked: Asked, on: boolean): void {
  useLayoutEffect(() => {
    const seed = model.session.peek()?.seed;
    if (!on || seed === undefined) return undefined;
    const item = asked.id;
    const keeper = draftKeeper();
    const { draft } = keeper.read().data;
    if (
      draft?.item === item &&
      draft.seed === seed &&
      isBlank(model.given(units.peek())) &&
      gradedAgain(asked, draft.given, 1) !== undefined
    )
      model.putBack(draft.given, draft.certainty ?? undefined, units.peek());
    return effect(() => {
      const given = model.given(units.value);
      const certainty = model.certainty.value ?? null;
      const blank = isBlank(given) && certainty === null;
      if (!blank) keeper.update(() => ({ draft: { item, seed, given, certainty } }));
    });
  }, [model, asked]);
}
