/**
 * Where a link leads that a script of the course made for the root of a host: the same page inside the package.
 * @param root folder of the course in the package, with a slash at its end
 * @returns undefined if the link is right as it is
 */
export function inPackage(href: string, root: string): string | undefined {
  const { origin, pathname, search, hash } = new URL(href);
  const at = new URL(root);
  if (origin !== at.origin) return undefined;
  const file = pathname.endsWith('/') ? `${pathname}index.html` : pathname;
  if (!file.startsWith(at.pathname)) return at.origin + at.pathname + file.slice(1) + search + hash;
  return file === pathname ? undefined : at.origin + file + search + hash;
}
