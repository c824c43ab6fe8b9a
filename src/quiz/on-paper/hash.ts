const PRIME = 16777619;
const START = 2166136261;

/** 32 bits of a text: FNV-1a (Fowler, Noll, Vo) over its code units, low byte first. Not for anything secret. */
export function hashOf(text: string): number {
  let hash = START;
  for (let i = 0; i < text.length; i += 1) {
    const unit = text.charCodeAt(i);
    hash = Math.imul(hash ^ (unit & 0xff), PRIME);
    hash = Math.imul(hash ^ (unit >>> 8), PRIME);
  }
  return hash >>> 0;
}
