import type { Test } from '../diagnosis/index.ts';
import { words } from './words.en.ts';

const { cautions } = words;

/** What stands before a test, since it can hurt somebody (specification of the planner, section 2.1). */
export function cautionsFor({ kind, at, setUps }: Test): readonly string[] {
  const has = (...some: readonly (typeof setUps)[number][]) =>
    some.some((one) => setUps.includes(one));
  // Every clutch tap is read with its range selected, and Park can let go with the engine at 3000 rpm.
  // In Drive at that speed the wheels turn, and on a take-off no chock may lie there.
  const inGear = kind === 'clutchPressure' || at.range === 'drive' || at.range === 'reverse';
  const turning = at.rpm === 3000 || kind === 'takeoffSlip';
  const chocked = (inGear && !turning) || kind === 'gaugeFlutter';
  return [
    ...(has('hot') ? [cautions.hot] : []),
    ...(chocked ? [cautions.engagement] : []),
    ...(kind === 'takeoffSlip' ? [cautions.takeoff] : []),
    ...(at.rpm === 1500 && kind !== 'coolerFlow' ? [cautions.loaded] : []),
    ...(at.rpm === 3000 && kind === 'linePressure' ? [cautions.fast] : []),
    ...(has('gaugeLine', 'gaugeForward', 'gaugeReverse', 'gaugeHigh') ? [cautions.gauge] : []),
    ...(has('lift') ? [cautions.lift] : []),
    ...(kind === 'coolerFlow' ? [cautions.cooler] : []),
    ...(has('panOff') ? [cautions.open] : []),
    ...(kind === 'airTest' || kind === 'airWhere' ? [cautions.air] : []),
  ];
}
