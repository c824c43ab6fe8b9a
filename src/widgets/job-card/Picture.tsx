import { driveAfter, STEPS } from '../../car/back-together.ts';
import { printer } from '../../quantity/print.ts';
import { pressure } from '../../quantity/quantities.ts';
import type { PictureProps } from '../../simulation/simulation-view.tsx';
import { useUnits } from '../../ui/use-units.ts';
import type { JobCardModel } from './model.ts';
import { airWords, printCount, stickWords } from './print.ts';
import { words } from './words.en.ts';

const WIDTH = 390;
const BOX = 26;
const PITCH = 30;
/** Bars from here, so much for a kilopascal. */
const FROM = 44;
const LONG = 0.38;

/** The lines of the card in their order: signed, open, or hidden without a proof. */
function Strip({ model }: { readonly model: JobCardModel }) {
  const { done, skipped } = model;
  return (
    <g aria-hidden="true">
      {STEPS.map((step, at) => {
        const is = done.value.includes(step)
          ? 'signed'
          : skipped.value.includes(step)
            ? 'hidden'
            : 'open';
        const x = 2 + at * PITCH;
        return (
          <g key={step} class={`job-${is}`}>
            <rect x={x} y={2} width={BOX} height={22} />
            <text x={x + BOX / 2} y={18.5} text-anchor="middle">
              {printCount(at + 1)}
            </text>
            {is === 'hidden' && <path d={`M${x} 24L${x + BOX} 2`} />}
          </g>
        );
      })}
    </g>
  );
}

interface BarsProps {
  readonly y: number;
  readonly name: string;
  /** What is read and what a right job reads [kPa]; nothing before the drive. */
  readonly cold: readonly [read: number, right: number] | null;
  readonly hot: readonly [read: number, right: number] | null;
}
function Bars({ y, name, cold, hot }: BarsProps) {
  const print = printer(useUnits());
  return (
    <g>
      <text class="job-name" x={2} y={y}>
        {name}
      </text>
      {cold === null && (
        <text x={WIDTH - 2} y={y} text-anchor="end">
          {words.picture.none}
        </text>
      )}
      {(
        [
          ['cold', cold],
          ['hot', hot],
        ] as const
      ).map(([when, pair], at) => {
        if (pair === null) return null;
        const [read, right] = pair;
        const top = y + 7 + at * 18;
        return (
          <g key={when} class={`job-${when}`}>
            <text x={2} y={top + 11}>
              {words.picture[when]}
            </text>
            <rect x={FROM} y={top + 1} width={(LONG * read).toFixed(1)} height={10} />
            <path d={`M${(FROM + LONG * right).toFixed(1)} ${top - 1}v14`} />
            <text x={WIDTH - 2} y={top + 11} text-anchor="end">
              {words.picture.of({ read: print(read, pressure), right: print(right, pressure) })}
            </text>
          </g>
        );
      })}
    </g>
  );
}

/** The card, and what the car it let go reads cold and hot beside a right job. */
export function Picture({ model, revealed }: PictureProps<JobCardModel>) {
  const system = useUnits();
  const { air } = model;
  const read = revealed ? model.driven.value : null;
  const right = read && driveAfter([]);
  const pair = (when: 'cold' | 'hot', tap: 'forward' | 'reverse') =>
    read && right && ([read[when][tap].kPa, right[when][tap].kPa] as const);
  const { picture } = words;
  const held = revealed ? air.value : null;
  const rows = [
    [picture.air, held === null ? picture.noAir : airWords(held, system)],
    [picture.stick, read === null ? picture.none : stickWords(read, system)],
  ] as const;
  return (
    <svg class="job-picture" viewBox={`0 0 ${WIDTH} 192`}>
      <Strip model={model} />
      <Bars
        y={46}
        name={picture.forward}
        cold={pair('cold', 'forward')}
        hot={pair('hot', 'forward')}
      />
      <Bars
        y={104}
        name={picture.reverse}
        cold={pair('cold', 'reverse')}
        hot={pair('hot', 'reverse')}
      />
      {rows.map(([name, text], at) => (
        <g key={name}>
          <text class="job-name" x={2} y={164 + 22 * at}>
            {name}
          </text>
          <text x={WIDTH - 2} y={164 + 22 * at} text-anchor="end">
            {text}
          </text>
        </g>
      ))}
    </svg>
  );
}
