import { readStateLink } from '../meeting/state-link.ts';
import { hashOf } from '../meeting/steps.ts';
import { carSearch } from './CarScene.tsx';
import type { StageModel } from './model.ts';
import type { OwnAddress } from './address.ts';

/** Where a simulation on the page stands, as it keeps it in the history entry. */
function keptSearch(id: string): string | undefined {
  const state = history.state as { readonly simulations?: Record<string, unknown> } | null;
  const kept = state?.simulations?.[id] as { readonly search?: unknown } | undefined;
  return typeof kept?.search === 'string' ? kept.search : undefined;
}

/**
 * The address that a phone opens for what stands on the wall: a simulation as it stands now in its lesson, a car on its page,
 * any other scene on the stage.
 * @param base the folder that the site stands in
 * @returns undefined for a meeting of one's own that is too long for a link
 */
export function addressNow(
  model: StageModel,
  base: string,
  own: OwnAddress | undefined,
): string | undefined {
  const scene = model.scene.value;
  const here = `${location.origin}${location.pathname}`;
  if (scene?.kind === 'simulation') {
    const link = readStateLink((model.step.value === 'run' ? scene.run : undefined) ?? scene.state);
    if (link) {
      const [page] = link.href.split('?');
      const search = keptSearch(link.id) ?? `?${link.id}=${link.state}`;
      const site = new URL(base, location.href);
      return new URL(`${(page ?? '').replace(/^\//, '')}${search}#${link.id}`, site).href;
    }
  }
  if (scene?.kind === 'case' && model.step.value === 'open')
    return new URL(`practise/case/${carSearch(scene)}`, new URL(base, location.href)).href;
  return own ? own.link : `${here}${hashOf(model.place.value)}`;
}
