import { words } from '../words.en.ts';

const WET = { full: 44, low: 16, veryLow: 0 } as const;

/** A dipstick held flat, with its two marks; what is wet is tinted and hatched. */
export function Level({ level }: { readonly level: keyof typeof WET }) {
  const { instrument } = words;
  const wet = WET[level];
  return (
    <svg
      class="case-picture"
      viewBox="0 0 240 60"
      role="img"
      aria-label={`${instrument.levelTitle}. ${instrument.level[level]}`}
    >
      <rect class="case-line" x="20" y="22" width="200" height="16" rx="3" />
      {wet > 0 && <rect class="case-oil" x="21" y="23" width={wet * 2} height="14" />}
      <path class="case-line" d="M72 14V46M128 14V46" />
      <text class="case-text" x="100" y="58" text-anchor="middle">
        {instrument.level[level]}
      </text>
    </svg>
  );
}
