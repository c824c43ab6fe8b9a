/** Reads the one block, `/*`, that our public/_headers has: the form static hosts share. */
export function parseHeaders(text: string): [name: string, value: string][] {
  return text
    .split('\n')
    .filter((line) => /^\s+\S/.test(line))
    .map((line) => {
      const colon = line.indexOf(':');
      if (colon < 0) throw new Error(`public/_headers: "${line.trim()}" has no colon.`);
      return [line.slice(0, colon).trim(), line.slice(colon + 1).trim()];
    });
}
