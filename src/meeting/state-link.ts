/**
 * The address of a simulation at one state: `/lessons/<lesson>/?<simulation>=1~temp.90#<simulation>`, `/es/` before it in Spanish; on its way to the stage it goes
 * without the first stroke, because the site may stand in a folder.
 */
const FORM = /^\/?(?:[a-z-]+\/){1,3}\?([a-z-]+)=(\d+(?:~[\w.-]+)*)#([a-z-]+)$/;

export interface StateLink {
  /** The simulation. */
  readonly id: string;
  /** What stands behind the = : the version and the values. */
  readonly state: string;
  readonly href: string;
}

/** @returns undefined if the address is of another form, or names one simulation and opens at another */
export function readStateLink(href: string): StateLink | undefined {
  const [, id, state, anchor] = FORM.exec(href) ?? [];
  return id === undefined || state === undefined || id !== anchor ? undefined : { id, state, href };
}

export const isStateLink = (href: string): boolean => readStateLink(href) !== undefined;
export const simulationOf = (href: string): string | undefined => readStateLink(href)?.id;
