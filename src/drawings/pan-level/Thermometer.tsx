import type { JSX } from 'preact';
import { box } from '../parts/hatch.tsx';
import { Knob } from '../parts/knob.tsx';
import { Label } from '../parts/label.tsx';
import { clamp01, roundPlace } from '../scale.ts';

const X = 360;
const TUBE = { top: 40, foot: 186 };
const HIGH = TUBE.foot - TUBE.top;

/** Beside the pan; pulled by its knob where it may be moved. */
export function Thermometer({
  share,
  label,
  onShare,
}: {
  /** How high it stands, 0 to 1. */
  share: number;
  label: string;
  onShare?: ((share: number) => void) | undefined;
}): JSX.Element {
  const y = roundPlace(TUBE.foot - HIGH * share);
  return (
    <>
      <path
        class="dw-solid"
        d={`M${X - 5} ${TUBE.foot}V${TUBE.top - 4}a5 5 0 0 1 10 0V${TUBE.foot}a10 10 0 1 1 -10 0z`}
      />
      <path
        class="dw-ink"
        d={`${box(X - 2, y, 4, TUBE.foot + 6 - y)}M${X - 6} ${TUBE.foot + 8.5}a6 6 0 1 1 12 0a6 6 0 1 1 -12 0z`}
      />
      <Label x={389} y={224} anchor="end" lines={[`*${label}`]} />
      {onShare && (
        <Knob
          x={X}
          y={y}
          value={share}
          onPull={(from, down) => onShare(clamp01(from - down / HIGH))}
        />
      )}
    </>
  );
}
