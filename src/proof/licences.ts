/** Licences of what is sent to visitors. */

/** SPDX identifiers that let anybody use, change and pass it on, and ask for no more than to be named. */
const ALLOWED = ['0BSD', 'Apache-2.0', 'BSD-2-Clause', 'BSD-3-Clause', 'ISC', 'MIT', 'OFL-1.1'];

export interface Shipped {
  readonly name: string;
  readonly licence: string;
}

/** The list at the top of third-party-notices.txt. */
export const shippedLicences = (notices: string): readonly Shipped[] =>
  Array.from((notices.split(/^=+$/m)[0] ?? '').matchAll(/^(\S+) \d\S*: (.+)$/gm), (match) => ({
    name: match[1] ?? '',
    licence: match[2] ?? '',
  }));

/** One sentence for each that may not be sent; one too where none is listed at all, since some always are. */
export const strangeLicences = (shipped: readonly Shipped[]): readonly string[] =>
  shipped.length === 0
    ? ['The list of licenses is empty.']
    : shipped
        .filter(({ licence }) => !ALLOWED.includes(licence))
        .map(({ name, licence }) => `${name} is under ${licence}.`);
