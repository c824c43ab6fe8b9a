import { makeCar, readingOf, type Car, type CarGiven, type Reading } from '../car/index.ts';
import {
  fluidAt,
  makeFluid,
  secondTraining,
  training,
  type FluidState,
  type Plant,
} from '../engine/index.ts';
import type { CarAsked } from '../numbers/ask.ts';

/** The two training transmissions, by the word that a question uses for them. */
export const BOXES = ['first', 'second'] as const;
export type Box = (typeof BOXES)[number];

export const plantOf = (box: Box): Plant => (box === 'first' ? training : secondTraining);

/** Gears that a question asks of, each by its circuit. */
export const GEARS = ['first', 'reverse', 'third'] as const;
const circuits = { first: 'forward', reverse: 'reverse', third: 'high' } as const;

export const ratioOf = (box: Box, gear: (typeof GEARS)[number]): number =>
  plantOf(box).drive.ratios[circuits[gear]];

/** What a car with this transmission reads, filled with its own fluid. */
export const carOf = (box: Box, given: Omit<CarGiven, 'transmission'> = {}): Car =>
  makeCar({ ...given, transmission: plantOf(box) });
export const readIn = (box: Box, { faults, crackMm, fluid, ...asked }: CarAsked): Reading =>
  readingOf(
    carOf(box, {
      ...(faults && { faults }),
      ...(crackMm !== undefined && { crackMm }),
      ...(fluid && { fluid }),
    }),
    asked,
  );
export const tapIn = (box: Box, asked: CarAsked): number =>
  readIn(box, asked).clutches[asked.circuit ?? 'forward'].kPa;
/** Its fluid at a temperature. */
export const fluidIn = (box: Box, tempC: number): FluidState =>
  fluidAt(makeFluid(plantOf(box).fluid), tempC);
