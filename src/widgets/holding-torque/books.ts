import { clutchPressureFor, clutchTorque, RAD_S_PER_RPM, type Clutch } from '../../engine/index.ts';
import { format, printer } from '../../quantity/print.ts';
import { dimension, workedTorque } from '../../quantity/part-quantities.ts';
import { power, pressure } from '../../quantity/quantities.ts';
import type { UnitSystem } from '../../quantity/unit-system.ts';
import { words } from './words.en.ts';

/** The sizes that make a clutch; pressure belongs to the book's own question. */
export interface ClutchBuild {
  /** [kPa] */
  readonly pressure: number;
  readonly friction: number;
  readonly faces: number;
  /** [cm²] */
  readonly area: number;
  /** Mean radius [mm] */
  readonly radius: number;
  /** [N] */
  readonly spring: number;
}

export const BOOKS = ['khurmi-10.28', 'bhandari-11.1', 'bhandari-11.2'] as const;
export type Book = (typeof BOOKS)[number];

export interface BookExample {
  /** Inner and outer radius [mm]. */
  readonly ring: readonly [number, number];
  readonly build: ClutchBuild;
  /** What the book prints, and whether that is a torque [N m] or a power [kW] at a speed. */
  readonly prints:
    | { readonly kind: 'torque'; readonly value: number }
    | { readonly kind: 'power'; readonly value: number; readonly rpm: number };
}

/**
 * Uniform wear: pressure falls with radius, from the greatest, p, at the inner edge. Then
 * F = 2 pi p ri (ro - ri), and the mean radius is (ro + ri) / 2. So the ring pushes as a piston of
 * 2 pi ri (ro - ri) would with p all over it. In millimetres; gives cm² and mm.
 */
function uniformWear(outer: number, inner: number): Pick<ClutchBuild, 'area' | 'radius'> {
  return { area: (2 * Math.PI * inner * (outer - inner)) / 100, radius: (outer + inner) / 2 };
}
/** Uniform pressure: the whole ring is the piston, and the mean radius is 2/3 (ro³ - ri³) / (ro² - ri²). */
function uniformPressure(outer: number, inner: number): Pick<ClutchBuild, 'area' | 'radius'> {
  const squares = outer * outer - inner * inner;
  const cubes = outer * outer * outer - inner * inner * inner;
  return { area: (Math.PI * squares) / 100, radius: (2 * cubes) / (3 * squares) };
}

/** Worked disc clutches from two textbooks. Neither has a return spring, so it is set to nothing. */
export const books: Readonly<Record<Book, BookExample>> = {
  'khurmi-10.28': {
    ring: [75, 125],
    build: { pressure: 127, friction: 0.3, faces: 4, spring: 0, ...uniformWear(125, 75) },
    prints: { kind: 'power', value: 18.8, rpm: 500 },
  },
  'bhandari-11.1': {
    ring: [50, 100],
    build: { pressure: 1000, friction: 0.2, faces: 1, spring: 0, ...uniformWear(100, 50) },
    prints: { kind: 'torque', value: 235.619 },
  },
  'bhandari-11.2': {
    ring: [50, 100],
    build: { pressure: 1000, friction: 0.2, faces: 1, spring: 0, ...uniformPressure(100, 50) },
    prints: { kind: 'torque', value: 366.519 },
  },
};

/** How the book's sizes become area and mean radius, in the reader's units. */
export function howOf(book: Book, system: UnitSystem): string {
  const print = printer(system);
  const { ring, build } = books[book];
  const [inner, outer] = ring;
  return words.books[book].how({
    inner: print(inner, dimension),
    outer: print(outer, dimension),
    pressure: print(build.pressure, pressure),
  });
}

/** What a book prints, or what the engine makes of the same sizes, in the reader's units. */
export function bookNumber(book: Book, whose: 'book' | 'model', system: UnitSystem): string {
  const { prints } = books[book];
  const value = whose === 'book' ? prints.value : ours(book);
  return prints.kind === 'power'
    ? format(value, power, system)
    : format(value, workedTorque, system);
}

const clutchOf = (build: ClutchBuild): Clutch => ({
  area: build.area * 1e-4,
  springForce: build.spring,
  faces: build.faces,
  meanRadius: build.radius / 1e3,
  friction: build.friction,
  // Neither has a part in holding torque.
  strokeVolume: 0,
  compliance: 0,
});
/** Torque [N m] that the engine gives for a build. */
export const torqueOf = (build: ClutchBuild, pressure = build.pressure): number =>
  clutchTorque(clutchOf(build), pressure * 1e3);
/** Pressure [kPa] at which a build holds a torque [N m]. */
export const pressureFor = (build: ClutchBuild, torque: number): number =>
  clutchPressureFor(clutchOf(build), torque) / 1e3;

/** Power [kW] that goes through at a speed while nothing slips. */
export const powerOf = (torque: number, rpm: number): number =>
  (torque * rpm * RAD_S_PER_RPM) / 1e3;

/** The engine's number for what the book prints, in the same unit. */
export function ours(book: Book): number {
  const { build, prints } = books[book];
  const torque = torqueOf(build);
  return prints.kind === 'torque' ? torque : powerOf(torque, prints.rpm);
}
