import { driveAfter, STEPS, type DriveAfter } from '../../car/back-together.ts';
import { printer } from '../../quantity/print.ts';
import { pressure } from '../../quantity/quantities.ts';
import type { PictureProps } from '../../simulation/simulation-view.tsx';
import { useUnits } from '../../ui/use-units.ts';
import type { JobCardModel } from './model.ts';
import { airWords, printCount, stateOf, stickWords } from './print.ts';
import { Section } from './Section.tsx';
import { words } from './words.en.ts';

const WIDTH = 390;
const BOX = 26;
const PITCH = 30;
/** Bars from here, so much for a kilopascal. */
const FROM = 44;
const LONG = 0.34;

/** The lines of the card in their order: signed, open, or hidden without a proof. */
function Strip({ model }: { readonly model: JobCardModel }) {
  return (
    <g aria-hidden="true">
      {STEPS.map((step, at) => {
        const is = stateOf(model, step);
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
  /** What is read and what a right job reads [kPa]. */
  readonly cold: readonly [read: number, right: number];
  readonly hot: readonly [read: number, right: number];
}
function Bars({ y, name, cold, hot }: BarsProps) {
  const print = printer(useUnits());
  return (
    <g>
      <text class="job-name" x={2} y={y}>
        {name}
      </text>
      {(
        [
          ['cold', cold],
          ['hot', hot],
        ] as const
      ).map(([when, pair], at) => {
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

/** Both taps, cold and hot, beside a right job. */
function Taps({ read }: { readonly read: DriveAfter }) {
  const right = driveAfter([]);
  const pair = (when: 'cold' | 'hot', tap: 'forward' | 'reverse') =>
    [read[when][tap].kPa, right[when][tap].kPa] as const;
  return (
    <>
      {(['forward', 'reverse'] as const).map((tap, at) => (
        <Bars
          key={tap}
          y={46 + 58 * at}
          name={words.picture[tap]}
          cold={pair('cold', tap)}
          hot={pair('hot', tap)}
        />
      ))}
    </>
  );
}

/** The card, what it has covered so far, and what the car reads once it has been driven. */
export function Picture({ model, revealed }: PictureProps<JobCardModel>) {
  const system = useUnits();
  const { picture } = words;
  const read = revealed ? model.driven.value : null;
  const held = model.air.value;
  const rows = [
    [picture.air, held === null ? picture.noAir : airWords(held, system)],
    [picture.stick, read === null ? picture.none : stickWords(read, system)],
  ] as const;
  return (
    <svg class="job-picture" viewBox={`0 0 ${WIDTH} 206`} role="group" aria-label={picture.whole}>
      <Strip model={model} />
      {read === null ? <Section model={model} /> : <Taps read={read} />}
      {rows.map(([name, text], at) => (
        <g key={name}>
          <text class="job-name" x={2} y={180 + 21 * at}>
            {name}
          </text>
          <text x={WIDTH - 2} y={180 + 21 * at} text-anchor="end">
            {text}
          </text>
        </g>
      ))}
    </svg>
  );
}
