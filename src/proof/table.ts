/** The figures as a table of the repository, src/proof/figures.md. */
import type { Proof, Reasons } from './form.ts';
import { words } from './words.en.ts';

const cell = (text: string | number): string => String(text).replaceAll('|', '\\|');
const row = (cells: readonly (string | number)[]): string => `| ${cells.map(cell).join(' | ')} |`;

export const titleOf = (name: string): string =>
  Object.hasOwn(words.proofs, name) ? words.proofs[name as keyof typeof words.proofs].title : name;

export function markdown(proofs: readonly Proof[], reasons: Reasons): string {
  const { head } = words;
  const sections = proofs.map(({ name, on, machine, figures }) => [
    `## ${titleOf(name)}`,
    words.measured({ on, machine }),
    [
      row([head.what, head.value, head.bar, head.met, head.command]),
      row(['---', '---', '---', '---', '---']),
      ...figures.map(({ what, value, bar, met, command }) =>
        row([what, value, bar, met ? head.yes : head.no, `\`${command}\``]),
      ),
    ].join('\n'),
    ...figures
      .filter(({ met }) => !met)
      .map(({ what }) => `**${what}**: ${reasons[name]?.[what] ?? words.noReason}`),
  ]);
  return `${[`# ${words.title}`, words.made, ...sections.flat()].join('\n\n')}\n`;
}

/** The command that most figures of a proof come from. */
export function commonCommand({ figures }: Proof): string {
  const counts = new Map<string, number>();
  for (const { command } of figures) counts.set(command, (counts.get(command) ?? 0) + 1);
  const [first] = [...counts].toSorted(([, a], [, b]) => b - a);
  return first?.[0] ?? '';
}

const order = Object.keys(words.proofs);
/** As the page has them; one that is new stands at the end. */
export const inOrder = (proofs: readonly Proof[]): readonly Proof[] =>
  proofs.toSorted((a, b) => place(a) - place(b));
const place = ({ name }: Proof): number => {
  const at = order.indexOf(name);
  return at < 0 ? order.length : at;
};
