const given = new WeakMap<Request, Map<string, number>>();

/** `wanted`, or `wanted-2` where the page has it already: two cautions may each fold "the whole caution". */
export function addressOnPage(request: Request, wanted: string): string {
  const counts = given.get(request) ?? new Map<string, number>();
  given.set(request, counts);
  const count = (counts.get(wanted) ?? 0) + 1;
  counts.set(wanted, count);
  return count === 1 ? wanted : `${wanted}-${count}`;
}
