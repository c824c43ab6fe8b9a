/**
 * A shuffle that depends on its seed alone, so that a session can be replayed and tested. The generator is "mulberry32"
 * (public domain, widely published): small and even enough for ordering; not for anything secret.
 */
export function seededRandom(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}

export function shuffled<T>(items: readonly T[], random: () => number): readonly T[] {
  const out = [...items];
  for (let i = out.length - 1; i > 0; i -= 1) {
    const j = Math.floor(random() * (i + 1));
    const a = out[i] as T;
    out[i] = out[j] as T;
    out[j] = a;
  }
  return out;
}

/** A seed out of a name: FNV-1a (public domain). */
export const seedOf = (name: string): number =>
  Array.from(name).reduce(
    (sum, letter) => Math.imul(sum ^ letter.charCodeAt(0), 16777619),
    2166136261,
  );
