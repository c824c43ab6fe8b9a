/** What stands in the form of a question and was not checked yet: of one question, the last that was worked on. */
import { keeper, type Area, type Keeper } from './envelope.ts';
import { isCertainty, isGiven, type Certainty, type Given } from './given.ts';
import type { Form } from './versioned.ts';

export interface Draft {
  readonly item: string;
  /** Of the round that it is asked in. */
  readonly seed: number;
  readonly given: Given;
  /** Null while it has not been said. */
  readonly certainty: Certainty | null;
}
export interface Drafts {
  readonly draft: Draft | null;
}

function parse(data: unknown): Drafts | undefined {
  const draft = (data as Partial<Drafts> | null)?.draft;
  if (draft === null) return { draft };
  if (typeof draft !== 'object' || typeof draft.item !== 'string') return undefined;
  const { item, seed, given, certainty } = draft;
  if (!Number.isFinite(seed) || !isGiven(given)) return undefined;
  if (certainty !== null && !isCertainty(certainty)) return undefined;
  return { draft: { item, seed, given, certainty } };
}

export const draftForm: Form<Drafts> = { name: 'draft', version: 1, parse };

export const draftKeeper = (area?: Area): Keeper<Drafts> =>
  keeper({ ...draftForm, empty: { draft: null }, area });
