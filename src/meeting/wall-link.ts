/** The address that puts one simulation of a page onto the wall: `?page=lessons/<lesson>/&<simulation>=1~temp.90`. */
import { readStateLink, type StateLink } from './state-link.ts';

export interface WallLink extends StateLink {
  /** The page that the simulation stands on, as its address has it. */
  readonly page: string;
}

/** What a package names a page by, since platforms hand out files alone. */
const FILE = /index\.html$/;

/** @returns undefined if the address names no simulation at a state */
export function readWallLink(search: string): WallLink | undefined {
  const given = new URLSearchParams(search);
  const page = given.get('page') ?? '';
  given.delete('page');
  const [[id, state] = []] = given;
  const link = readStateLink(`${page.replace(FILE, '')}?${id ?? ''}=${state ?? ''}#${id ?? ''}`);
  // After the folder of the site a stroke would lead to another host.
  return link && !page.startsWith('/') ? { ...link, page } : undefined;
}
