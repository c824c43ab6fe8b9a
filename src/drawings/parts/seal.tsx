import type { JSX } from 'preact';
import { roundPlace } from '../scale.ts';

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
  const left = `M${roundPlace(li)} ${roundPlace(top)}h${roundPlace(-wall)}q${roundPlace(-bulge)} ${roundPlace((bottom - top) / 4)} 0 ${roundPlace((bottom - top) / 2)}q${roundPlace(-bulge)} ${roundPlace((bottom - top) / 4)} 0 ${roundPlace((bottom - top) / 2)}h${roundPlace(wall)}z`;
  const half = split / 2;
  const right =
    split > 0
      ? `M${roundPlace(ri)} ${roundPlace(top)}h${roundPlace(wall)}L${roundPlace(ri + wall + bulge)} ${roundPlace(splitY - half)}L${roundPlace(ri)} ${roundPlace(splitY - half * 0.7)}zM${roundPlace(ri)} ${roundPlace(bottom)}h${roundPlace(wall)}L${roundPlace(ri + wall + bulge)} ${roundPlace(splitY + half)}L${roundPlace(ri)} ${roundPlace(splitY + half * 0.7)}z`
      : `M${roundPlace(ri)} ${roundPlace(top)}h${roundPlace(wall)}q${roundPlace(bulge)} ${roundPlace((bottom - top) / 4)} 0 ${roundPlace((bottom - top) / 2)}q${roundPlace(bulge)} ${roundPlace((bottom - top) / 4)} 0 ${roundPlace((bottom - top) / 2)}h${roundPlace(-wall)}z`;
  return <path class="dw-soft" d={left + right} />;
}

/** Width a crack is drawn at: true proportion would be invisible, so it is exaggerated, but always in step with the number. */
export const crackWidth = (crackMm: number, unitsPerMm: number): number =>
  Number.isFinite(crackMm) && crackMm > 0.001 ? 1.2 + Math.min(crackMm, 0.6) * unitsPerMm : 0;
