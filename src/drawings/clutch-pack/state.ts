import { words } from './words.en.ts';

export interface ClutchPackState {
  /** Share of 1000 kPa behind the piston. */
  pressure: number;
  /** 0 backed off, 1 plates squeezed. */
  travel: number;
  holds: boolean;
  labels: { pressure: string; torque?: string | undefined };
}

export const clutchPackExample: ClutchPackState = {
  pressure: 0.4,
  travel: 1,
  holds: true,
  labels: { pressure: '400 kPa', torque: '423 N·m' },
};
export const clutchPackReleased: ClutchPackState = {
  pressure: 0,
  travel: 0,
  holds: false,
  labels: { pressure: '0 kPa' },
};

export const isFree = (s: ClutchPackState): boolean => s.travel < 1;

export function describeClutchPack(s: ClutchPackState): string {
  const { describe } = words;
  const { pressure, torque } = s.labels;
  if (isFree(s)) return describe.released({ pressure });
  return [
    describe.applied({ pressure }),
    s.holds ? describe.holds : describe.slips,
    ...(torque ? [describe.carries({ torque })] : []),
  ].join(' ');
}
