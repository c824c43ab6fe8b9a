/** The form of what is proved: the same for every proof, whatever measured it. */
import figuresKept from './figures.json' with { type: 'json' };
import reasonsGiven from './reasons.json' with { type: 'json' };
import { z } from 'zod';

const said = z.union([z.string().min(1), z.number()]);
const figure = z.strictObject({
  /** What was measured, in words for a foreman. */
  what: z.string().min(1),
  value: said,
  /** What it was meant to reach. */
  bar: said,
  met: z.boolean(),
  command: z.string().min(1),
});
export type Figure = Readonly<z.infer<typeof figure>>;

/** What a test of its own leaves behind in test-results/quality. */
const left = z.object({ name: z.string(), figures: z.array(figure) });
export const readLeft = (text: string): readonly Figure[] => left.parse(JSON.parse(text)).figures;

const proof = z.strictObject({
  name: z.string(),
  /** The day, as 2026-11-29. */
  on: z.iso.date(),
  machine: z.string(),
  figures: z.array(figure),
});
export type Proof = Readonly<z.infer<typeof proof>>;
const all = z.strictObject({ proofs: z.array(proof) });

/** What the last run of each kept. */
export const keptFigures = (): readonly Proof[] => all.parse(figuresKept).proofs;

/** By the name of the proof and what was measured: why it falls short, and what comes of it. */
const reasons = z.record(z.string(), z.record(z.string(), z.string().min(40)));
export type Reasons = Readonly<z.infer<typeof reasons>>;
export const givenReasons = (): Reasons => reasons.parse(reasonsGiven);

/** One sentence for each bar that is missed without a reason, and for each reason that no bar needs any more. */
export function unexplained(proofs: readonly Proof[], given: Reasons): readonly string[] {
  const missed = new Set(
    proofs.flatMap(({ name, figures }) =>
      figures.filter(({ met }) => !met).map(({ what }) => `${name}: ${what}`),
    ),
  );
  const explained = new Set(
    Object.entries(given).flatMap(([name, whats]) =>
      Object.keys(whats).map((what) => `${name}: ${what}`),
    ),
  );
  return [
    ...[...missed]
      .filter((one) => !explained.has(one))
      .map((one) => `${one} misses its bar, and src/proof/reasons.json does not say why.`),
    ...[...explained]
      .filter((one) => !missed.has(one))
      .map((one) => `${one} has a reason in src/proof/reasons.json, and misses no bar.`),
  ];
}
