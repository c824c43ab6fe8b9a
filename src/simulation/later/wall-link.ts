const WALL = 'meetings/wall/';

/**
 * The address that puts a simulation onto the wall, as a meeting of one scene: the state it has, and the page it stands on, which leaving
 * leads back to.
 * @param search the state alone, as a link carries it
 */
export function wallLink(search: string): string {
  // Wherever the site stands, this is moved with it: src/build/elsewhere.ts.
  const wall = new URL(`/meetings/wall/?page=`, location.href).href;
  const root = wall.slice(0, wall.lastIndexOf(WALL));
  const page = `${location.origin}${location.pathname}`.slice(root.length);
  return `${wall}${page}${search.replace('?', '&')}`;
}
