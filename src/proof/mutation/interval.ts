/** What a share in a sample says about the share in the whole: the 95 % interval of E. B. Wilson (1927), without a correction for continuity. */
export function interval(hits: number, of: number): readonly [number, number] {
  const z = 1.959964;
  const share = hits / of;
  const middle = share + (z * z) / (2 * of);
  const half = z * Math.sqrt((share * (1 - share)) / of + (z * z) / (4 * of * of));
  const scale = 1 + (z * z) / of;
  return [(middle - half) / scale, (middle + half) / scale];
}
