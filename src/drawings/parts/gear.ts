import { roundPlace } from '../scale.ts';

/** Outline of a spur gear with straight-sided teeth; the same routine draws pump gears and tone wheels. */
export function gearPath(
  cx: number,
  cy: number,
  root: number,
  tip: number,
  teeth: number,
  phase = 0,
  topShare = 0.28,
): string {
  const pitch = (2 * Math.PI) / teeth;
  const at = (radius: number, angle: number): string =>
    `${roundPlace(cx + radius * Math.cos(angle))} ${roundPlace(cy + radius * Math.sin(angle))}`;
  const parts: string[] = [];
  for (let i = 0; i < teeth; i += 1) {
    const mid = phase + i * pitch;
    const top = (pitch * topShare) / 2;
    const foot = pitch * 0.3;
    parts.push(at(root, mid - foot), at(tip, mid - top), at(tip, mid + top), at(root, mid + foot));
  }
  return `M${parts.join('L')}z`;
}

export const circlePath = (cx: number, cy: number, radius: number): string =>
  `M${roundPlace(cx - radius)} ${roundPlace(cy)}a${roundPlace(radius)} ${roundPlace(radius)} 0 1 0 ${roundPlace(2 * radius)} 0a${roundPlace(radius)} ${roundPlace(radius)} 0 1 0 ${roundPlace(-2 * radius)} 0z`;
