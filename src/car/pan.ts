/**
 * The pan of the training transmission: what a stick shows and what the pick-up gets, for a fill that is off by so much. What
 * stands above the pick-up, and the air it draws, is the engine's; area, marks, gears and places are invented. That a surface
 * tips by acceleration over gravity is the law of a fluid at rest in a car that brakes, bends or climbs.
 */
import {
  DEFAULT_FLUID,
  densityRatio,
  fluidClasses,
  makeFluid,
  marginOverPickUp,
  training,
} from '../engine/index.ts';
import { readingOf } from './readings.ts';

/** Free surface of the fluid in the pan [m2]: one litre is 20 mm. */
const AREA = 0.05;
/** From the middle of the pan to the pick-up, and to the stick on the other side [mm]. */
const ASIDE_MM = 25;
/** Slope of the surface: a steep street nose up, and a brisk bend at three tenths of gravity. */
export const SLOPE = { flat: 0, hill: 0.15, bend: 0.3 } as const;
export type Place = keyof typeof SLOPE;
export const PLACES = Object.keys(SLOPE) as readonly Place[];

/** Between these the stick is read, and at its middle a right fill stands between the marks [°C]. */
export const WINDOW_C = { from: 65, middle: 75, to: 85 } as const;
/** Where a plug with an overflow pipe is read instead [°C]. */
export const PLUG_C = { from: 30, middle: 40, to: 50 } as const;
/** MIN and MAX, from the middle between them [mm]: half a litre apart. */
export const MARK_MM = 5;
/** The lowest turning part, above the mouth of the pick-up [mm]. */
export const GEARS_MM = 23;

export interface Fill {
  /** More or less than the right fill [L]. */
  readonly offL: number;
  readonly tempC: number;
  readonly engineRpm: number;
  readonly place: Place;
}

const fluid = makeFluid(fluidClasses[DEFAULT_FLUID]);
export const mmOf = (litres: number): number => litres / 1e3 / AREA / 1e-3;
export const litresOf = (mm: number): number => (mm / 1e3) * AREA * 1e3;

/** How much the whole fill is more at a temperature than at 20 °C [L]. */
export const swollenBy = (tempC: number): number =>
  training.sump.fill * 1e3 * (densityRatio(fluid, 20, tempC) - 1);

/** The fluid that a place takes from the pick-up [m3]. */
const takenBy = (place: Place): number => ((SLOPE[place] * ASIDE_MM) / 1e3) * AREA;

function marginL(tempC: number, engineRpm: number, place: Place): number {
  const sump = { ...training.sump, spare: training.sump.spare - takenBy(place) };
  return 1e3 * marginOverPickUp(sump, { engineRpm, swell: densityRatio(fluid, 20, tempC) });
}

/** What the middle between the marks stands for: the right fill in the window, at idle, on the flat [mm above the mouth]. */
export const MIDDLE_MM = mmOf(marginL(WINDOW_C.middle, training.testPoints.idle.engineRpm, 'flat'));

/** Where the fluid stands. A level under the mouth is what is missing there: the pump draws air instead. */
export function levelOf({ offL, tempC, engineRpm, place }: Fill) {
  const middle = marginL(tempC, engineRpm, 'flat') + offL;
  const mouth = marginL(tempC, engineRpm, place) + offL;
  const stick = 2 * middle - mouth;
  return {
    /** Above the mouth of the pick-up, in the middle of the pan and at the pick-up [mm]. */
    middleMm: mmOf(middle),
    mouthMm: mmOf(mouth),
    /** On the stick, from the middle between the marks [mm]. */
    stickMm: mmOf(stick) - MIDDLE_MM,
    /** The stick ends at the height of the mouth. */
    stickDry: stick <= 0,
    gearsDip: mmOf(middle) > GEARS_MM,
  };
}

/** Air drawn, 0 to 1, and the line at its idle command in Drive [kPa]. */
export function pickUpOf({ offL, tempC, engineRpm, place }: Fill) {
  const { sump } = training;
  const plant = {
    ...training,
    sump: { ...sump, spare: sump.spare - takenBy(place) },
    missingFluid: Math.max(0, -offL) / 1e3,
  };
  const { air, lineKpa, lineAtCommand } = readingOf({ plant, fluid }, { tempC, engineRpm });
  return { air, lineKpa, lineAtCommand };
}
