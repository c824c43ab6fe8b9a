import { chanceFrom } from '../../diagnosis/index.ts';
import { words } from '../words.en.ts';

/** The same specks each time: a picture that flickers is no evidence. */
const chance = chanceFrom(11);
const SPECKS = Array.from({ length: 90 }, () => ({
  x: 16 + 118 * chance(),
  y: 16 + 88 * chance(),
  turn: 180 * chance(),
}));
const PLEATS = [164, 174, 184, 194, 204, 214];

/** Pan on the left, filter on the right. */
export function Pan({ pan }: { readonly pan: 'clean' | 'dust' | 'metal' | 'clogged' }) {
  const { instrument } = words;
  return (
    <svg
      class="case-picture"
      viewBox="0 0 240 120"
      role="img"
      aria-label={`${instrument.panTitle}. ${instrument.pan[pan]}`}
    >
      <rect class="case-line" x="8" y="8" width="134" height="104" rx="10" />
      <rect class="case-magnet" x="60" y="48" width="30" height="24" rx="4" />
      {pan === 'dust' &&
        SPECKS.map(({ x, y }, i) => <circle key={i} class="case-ink" cx={x} cy={y} r="2" />)}
      {pan === 'metal' &&
        SPECKS.slice(0, 30).map(({ x, y, turn }, i) => (
          <path
            key={i}
            class="case-sliver"
            transform={`translate(${x.toFixed(1)} ${y.toFixed(1)}) rotate(${turn.toFixed(0)})`}
            d="M-5 0H5"
          />
        ))}
      <rect class="case-line" x="156" y="8" width="76" height="104" rx="4" />
      {PLEATS.map((x) => (
        <path key={x} class={pan === 'clogged' ? 'case-clogged' : 'case-line'} d={`M${x} 16V104`} />
      ))}
    </svg>
  );
}
