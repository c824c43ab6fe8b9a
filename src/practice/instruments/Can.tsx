import { words } from '../words.en.ts';

/** What the can holds [L]. */
const FULL = 10;

/** A can after one minute of cooler return. */
export function Can({ liters, shown }: { readonly liters: number; readonly shown: string }) {
  const { instrument } = words;
  const high = 96 * Math.min(1, liters / FULL);
  return (
    <svg
      class="case-picture"
      viewBox="0 0 240 120"
      role="img"
      aria-label={`${instrument.canTitle}. ${instrument.canDesc({ value: shown })}`}
    >
      <rect class="case-oil" x="71" y={110 - high} width="98" height={high} />
      <path class="case-line" d="M70 10V110H170V10" />
      {[0.25, 0.5, 0.75].map((part) => (
        <path key={part} class="case-line" d={`M170 ${110 - 96 * part}h-12`} />
      ))}
    </svg>
  );
}
