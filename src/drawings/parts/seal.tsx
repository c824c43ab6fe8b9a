import type { JSX } from 'preact';
import { r } from '../scale.ts';

export interface TubeSealProps {
  /** Middle of the passage it seals. */
  cx: number;
  top: number;
  bottom: number;
  /** Bore of the passage and thickness of the rubber wall. */
  bore: number;
  wall: number;
  /** Height of the split in drawing units, 0 for a whole seal, and where it sits. */
  split: number;
  splitY: number;
}

/**
 * Transfer seal: a rubber tube with bulged walls between valve body and case, cut along its axis. Rubber is solid
 * grey, metal is hatched. The split opens the right wall.
 */
export function TubeSeal({
  cx,
  top,
  bottom,
  bore,
  wall,
  split,
  splitY,
}: TubeSealProps): JSX.Element {
  const li = cx - bore / 2;
  const ri = cx + bore / 2;
  const bulge = wall * 0.35;
  const left = `M${r(li)} ${r(top)}h${r(-wall)}q${r(-bulge)} ${r((bottom - top) / 4)} 0 ${r((bottom - top) / 2)}q${r(-bulge)} ${r((bottom - top) / 4)} 0 ${r((bottom - top) / 2)}h${r(wall)}z`;
  const half = split / 2;
  const right =
    split > 0
      ? `M${r(ri)} ${r(top)}h${r(wall)}L${r(ri + wall + bulge)} ${r(splitY - half)}L${r(ri)} ${r(splitY - half * 0.7)}zM${r(ri)} ${r(bottom)}h${r(wall)}L${r(ri + wall + bulge)} ${r(splitY + half)}L${r(ri)} ${r(splitY + half * 0.7)}z`
      : `M${r(ri)} ${r(top)}h${r(wall)}q${r(bulge)} ${r((bottom - top) / 4)} 0 ${r((bottom - top) / 2)}q${r(bulge)} ${r((bottom - top) / 4)} 0 ${r((bottom - top) / 2)}h${r(-wall)}z`;
  return <path class="dw-soft" d={left + right} />;
}

/** Width a crack is drawn at: true proportion would be invisible, so it is exaggerated, but always in step with the number. */
export const crackWidth = (crackMm: number, unitsPerMm: number): number =>
  Number.isFinite(crackMm) && crackMm > 0.001 ? 1.2 + Math.min(crackMm, 0.6) * unitsPerMm : 0;
