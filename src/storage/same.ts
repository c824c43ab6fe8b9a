/** The same for two things that say the same, whatever order their entries came in. */
export function textOf(value: unknown): string {
  if (typeof value !== 'object' || value === null) return JSON.stringify(value);
  if (Array.isArray(value)) return `[${value.map(textOf).join()}]`;
  const fields = value as Readonly<Record<string, unknown>>;
  const said = Object.keys(fields).filter((key) => fields[key] !== undefined);
  return `{${said
    .sort()
    .map((key) => `${JSON.stringify(key)}:${textOf(fields[key])}`)
    .join()}}`;
}
export const isSame = (a: unknown, b: unknown): boolean => textOf(a) === textOf(b);
