/** What a learning platform hands to a page: the calls of the SCORM 1.2 run-time environment. */
export interface Api {
  LMSInitialize(none: ''): string;
  LMSFinish(none: ''): string;
  LMSGetValue(name: string): string;
  LMSSetValue(name: string, value: string): string;
  LMSCommit(none: ''): string;
}
interface Holder {
  readonly API?: Api;
  readonly parent?: Holder | null;
  readonly opener?: Holder | null;
}

/** As far up as the standard's own example looks. */
const HIGHEST = 7;

function above(from: Holder): Api | undefined {
  let at = from;
  for (let up = 0; up <= HIGHEST; up += 1) {
    if (at.API !== undefined) return at.API;
    const next = at.parent;
    if (next === undefined || next === null || next === at) return undefined;
    at = next;
  }
  return undefined;
}

/** Looks in the frames above, then in those above the window that opened this one. A window of somebody else throws: there is none. */
export function findApi(from: Holder): Api | undefined {
  try {
    return above(from) ?? (from.opener ? above(from.opener) : undefined);
  } catch {
    return undefined;
  }
}
