import { PORTS } from '../parts/manual-valve.tsx';
import { rodEnd } from '../parts/park-pawl.tsx';
import { words as park } from '../parts/park-words.en.ts';
import type { LabelProps } from '../parts/label.tsx';
import { roundPlace, type Point } from '../scale.ts';
import { words } from './words.en.ts';

/** Upright for a page and a phone held upright; wide for a phone on its side, and for two drawings above each other. */
export type RangeLayout = 'tall' | 'wide';

/** In its own drawing the pawl is as large as it is made; here its gear has to find room. */
export const PAWL_SCALE = 0.7;

export interface Place {
  readonly x: number;
  readonly y: number;
}
interface Box extends Place {
  readonly width: number;
  readonly height: number;
}
export interface Shared {
  readonly width: number;
  readonly height: number;
  readonly gear: Place;
  readonly controller: Box;
  /** Where the state is said, and on how many lines. */
  readonly says: Place;
  readonly wires: readonly { readonly points: string; readonly cross: Point }[];
}
export interface CableLayout extends Shared {
  readonly valve: Place;
  readonly plate: Place;
  readonly sheath: {
    readonly from: string;
    readonly d: string;
    readonly to: string;
    readonly cross: Point;
  };
  readonly lens: Place & { readonly radius: number; readonly from: string };
  readonly stop: Place;
}
export interface WireLayout extends Shared {
  /** Outlets of the clutch solenoid valves, and of the one that feeds the park actuator. */
  readonly drive: Place;
  readonly reverse: Place;
  readonly park: Place;
  readonly motor: Place;
  readonly byOil: Place;
}

export const CABLE: Readonly<Record<RangeLayout, CableLayout>> = {
  tall: {
    width: 390,
    height: 300,
    valve: { x: 248, y: 74 },
    plate: { x: 114, y: 120 },
    gear: { x: 316, y: 254 },
    sheath: { from: '62 112', d: 'M62 112C92 112 6 178 52 182', to: '52 182', cross: [46, 146] },
    controller: { x: 296, y: 104, width: 88, height: 40 },
    wires: [{ points: '370,104 370,4 278,4 278,24', cross: [370, 76] }],
    lens: { x: 46, y: 240, radius: 40, from: '72 209' },
    stop: { x: 94, y: 226 },
    says: { x: 96, y: 276 },
  },
  wide: {
    width: 482,
    height: 192,
    valve: { x: 260, y: 74 },
    plate: { x: 126, y: 120 },
    gear: { x: 430, y: 196 },
    sheath: { from: '62 112', d: 'M62 112C82 112 58 177 78 177', to: '78 177', cross: [70, 146] },
    controller: { x: 402, y: 8, width: 80, height: 40 },
    wires: [
      { points: '402,36 392,36', cross: [397, 36] },
      { points: '402,12 396,4 290,4 290,24', cross: [340, 4] },
    ],
    lens: { x: 31, y: 158, radius: 31, from: '58 173' },
    stop: { x: 192, y: 170 },
    says: { x: 346, y: 66 },
  },
};

export const WIRE: Readonly<Record<RangeLayout, WireLayout>> = {
  tall: {
    width: 390,
    height: 300,
    drive: { x: 228, y: 30 },
    reverse: { x: 338, y: 30 },
    park: { x: 140, y: 150 },
    motor: { x: 204, y: 200 },
    gear: { x: 316, y: 254 },
    controller: { x: 62, y: 50, width: 92, height: 42 },
    wires: [
      { points: '30,71 62,71', cross: [46, 71] },
      { points: '108,50 108,4 378,4 378,28', cross: [108, 28] },
      { points: '268,4 268,28', cross: [268, 16] },
      { points: '108,92 108,112 180,112 180,128', cross: [144, 112] },
    ],
    byOil: { x: 28, y: 246 },
    says: { x: 28, y: 276 },
  },
  wide: {
    width: 482,
    height: 192,
    drive: { x: 206, y: 28 },
    reverse: { x: 318, y: 28 },
    park: { x: 140, y: 112 },
    motor: { x: 226, y: 142 },
    gear: { x: 424, y: 196 },
    controller: { x: 44, y: 34, width: 86, height: 42 },
    wires: [
      { points: '22,55 44,55', cross: [33, 55] },
      { points: '88,34 88,3 358,3 358,26', cross: [88, 18] },
      { points: '246,3 246,26', cross: [246, 14] },
      { points: '88,76 88,84 180,84 180,90', cross: [134, 84] },
    ],
    byOil: { x: 20, y: 186 },
    says: { x: 374, y: 22 },
  },
};

/** Where the park rod ends, with the pawl engaged so far, from 0 to 1. */
export function coneAt(gear: Place, engage: number): Place {
  const end = rodEnd(engage);
  return {
    x: roundPlace(gear.x + end.x * PAWL_SCALE),
    y: roundPlace(gear.y + end.y * PAWL_SCALE),
  };
}

/** The names of the pawl and its gear; `cone` is where the rod ends. */
export function pawlNames(layout: RangeLayout, gear: Place, cone: Place): readonly LabelProps[] {
  const pawl: LabelProps = { x: gear.x + 52, y: gear.y - 20, anchor: 'end', lines: [park.pawl] };
  if (layout === 'wide')
    return [pawl, { x: gear.x - 40, y: gear.y - 8, anchor: 'end', lines: [park.gear] }];
  return [
    pawl,
    { x: gear.x + 38, y: gear.y + 10, lines: words.gearInTwo },
    {
      x: gear.x + 70,
      y: gear.y - 86,
      anchor: 'end',
      lines: [park.spring],
      to: `${gear.x + 24},${gear.y - 82} ${gear.x + 24},${gear.y - 62}`,
    },
    {
      x: gear.x - 74,
      y: gear.y - 16,
      lines: [park.cone],
      to: `${gear.x - 58},${gear.y - 29} ${cone.x + 36},${cone.y + 3}`,
    },
  ];
}

/** The names along the cable. */
export function cableNames(
  layout: RangeLayout,
  at: CableLayout,
  stop: readonly string[],
  places: Readonly<Record<'cone' | 'eye', Place>>,
): readonly LabelProps[] {
  const { valve, plate } = at;
  const { cone, eye } = places;
  const both: readonly LabelProps[] = [
    { x: valve.x + PORTS.ventR + 3, y: valve.y + 42, anchor: 'middle', lines: [words.vent] },
    { x: valve.x, y: valve.y + 42, anchor: 'middle', lines: [words.line] },
    {
      x: plate.x - 8,
      y: valve.y - 22,
      lines: [words.cable.valve],
      to: `${plate.x + 44},${valve.y - 17} ${valve.x - 80},${valve.y - 10}`,
    },
  ];
  if (layout === 'wide')
    return [
      ...both,
      { ...at.stop, lines: stop, to: `${at.stop.x - 4},${at.stop.y - 5} ${eye.x + 13},${eye.y}` },
      { x: valve.x + PORTS.ventD + 3, y: valve.y + 42, anchor: 'middle', lines: [words.vent] },
    ];
  return [
    ...both,
    { ...at.stop, lines: stop },
    { x: 2, y: 134, lines: [words.cable.lever], to: '24,121 40,100' },
    { x: 0, y: 192, lines: [park.cable] },
    { x: 208, y: 180, lines: [park.plate], to: `204,174 ${plate.x + 30},${plate.y + 28}` },
    { x: 226, y: 152, lines: [words.cable.roller], to: `223,147 ${plate.x + 53},${plate.y + 4}` },
    { x: 166, y: 244, lines: [words.rod], to: `190,231 ${cone.x - 22},${cone.y - 6}` },
  ];
}
