/** The simulations, each fetched when a scene with it is reached. */
import type { ComponentType } from 'preact';
import { readStateLink } from '../meeting/state-link.ts';
import type { NamedState } from '../simulation/later/state-words.ts';

type View = ComponentType<Record<string, unknown>> & { readonly sim?: NamedState };
const views = import.meta.glob<{ readonly View: View }>('../widgets/*/View.tsx');

export const viewOf = (id: string): (() => Promise<{ readonly View: View }>) | undefined =>
  views[`../widgets/${id}/View.tsx`];

/** What is solved when the site is built, for those that have such. */
async function solved(base: string, id: string): Promise<Record<string, unknown>> {
  const answer = await fetch(`${base.replace(/\/$/, '')}/meetings/solved/${id}.json`);
  if (!answer.ok) throw new Error(`No file of "${id}".`);
  return (await answer.json()) as Record<string, unknown>;
}

export interface Fetched {
  readonly View: View;
  readonly props: Record<string, unknown>;
}

/** @returns undefined if there is no such simulation; rejects if it does not come */
export async function fetchSimulation(base: string, id: string): Promise<Fetched | undefined> {
  const load = viewOf(id);
  if (load === undefined) return undefined;
  const [{ View }, props] = await Promise.all([load(), solved(base, id)]);
  return { View, props };
}

/** What the address has to say so that a simulation opens at this state. */
export function searchOf(
  href: string,
): { readonly id: string; readonly search: string } | undefined {
  const link = readStateLink(href);
  return link && { id: link.id, search: `?${link.id}=${link.state}` };
}
