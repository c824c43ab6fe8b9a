import type { Scene } from '../meeting/meeting.ts';
import { readStateLink } from '../meeting/state-link.ts';
import { hashOf } from '../meeting/steps.ts';
import { carSearch } from './CarScene.tsx';
import type { StageModel } from './model.ts';

/** The lesson that a question of the course was taken from. */
export const lessonOf = (scene: Scene | undefined): string | undefined =>
  scene?.kind === 'vote' ? scene.lesson : undefined;

/** Where a simulation on the page stands, as it keeps it in the history entry. */
function keptSearch(id: string): string | undefined {
  const state = history.state as { readonly simulations?: Record<string, unknown> } | null;
  const kept = state?.simulations?.[id] as { readonly search?: unknown } | undefined;
  return typeof kept?.search === 'string' ? kept.search : undefined;
}

/** The simulation of a scene, and what an address has behind the ? for it: the state that it stands at now, or the one that it opens with. */
function simulationNow({ scene: { value: scene }, step }: StageModel) {
  if (scene?.kind !== 'simulation') return undefined;
  const link = readStateLink((step.value === 'run' ? scene.run : undefined) ?? scene.state);
  return link && { ...link, search: keptSearch(link.id) ?? `?${link.id}=${link.state}` };
}

export const searchNow = (model: StageModel): string | undefined => simulationNow(model)?.search;

/**
 * The address that a phone opens for what stands on the wall: a simulation as it stands now in its lesson, a car on its page,
 * any other scene on the stage. A meeting of one's own is on this device alone: its question of the course leads to the lesson.
 * @param base the folder that the site stands in
 * @returns undefined where a phone has nothing to open: the link to the whole meeting would tell notes and answers
 */
export function addressNow(model: StageModel, base: string, own: boolean): string | undefined {
  const scene = model.scene.value;
  const site = new URL(base, location.href);
  const simulation = simulationNow(model);
  if (simulation) {
    const [page = ''] = simulation.href.split('?');
    return new URL(`${page.replace(/^\//, '')}${simulation.search}#${simulation.id}`, site).href;
  }
  if (scene?.kind === 'case' && (own || model.step.value === 'open'))
    return new URL(`practise/case/${carSearch(scene)}`, site).href;
  if (!own) return `${location.origin}${location.pathname}${hashOf(model.place.value)}`;
  return lessonOf(scene) && new URL(`lessons/${lessonOf(scene)}/`, site).href;
}
