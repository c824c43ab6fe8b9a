const counts = new WeakMap<Request, number>();

/** 1, 2, 3 … within one page, so that ids repeat from build to build and never within a page. */
export function nextOnPage(request: Request): number {
  const next = (counts.get(request) ?? 0) + 1;
  counts.set(request, next);
  return next;
}
