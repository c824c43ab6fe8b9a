import { clutchPressureFor, clutchTorque, RAD_S_PER_RPM, type Clutch } from '../../engine/index.ts';
import { format, printer } from '../../quantity/print.ts';
import { dimension } from '../../quantity/part-quantities.ts';
import { pressure } from '../../quantity/quantities.ts';
import type { UnitText } from '../../quantity/unit-system.ts';

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
  readonly short: string;
  readonly full: string;
  readonly build: ClutchBuild;
  /** What the book prints, and whether that is a torque [N m] or a power [kW] at a speed. */
  readonly prints:
    | { readonly kind: 'torque'; readonly value: number }
    | { readonly kind: 'power'; readonly value: number; readonly rpm: number };
  /** How the book's sizes become area and mean radius. */
  readonly how: UnitText;
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

/** A book's givens, in the reader's units: radii [mm] and pressure [kPa]. */
const ring =
  (
    plates: string,
    [inner, outer]: readonly [number, number],
    kpa: number,
    where: string,
  ): UnitText =>
  (system) => {
    const print = printer(system);
    return `${plates}, radii ${print(inner, dimension)} and ${print(outer, dimension)}, ${print(kpa, pressure)} ${where}.`;
  };

/** Worked disc clutches from two textbooks. Neither has a return spring, so it is set to nothing. */
export const books: Readonly<Record<Book, BookExample>> = {
  'khurmi-10.28': {
    short: 'Theory of Machines, example 10.28',
    full: 'R.\u00a0S.\u00a0Khurmi and J.\u00a0K.\u00a0Gupta, Theory of Machines, example 10.28',
    build: { pressure: 127, friction: 0.3, faces: 4, spring: 0, ...uniformWear(125, 75) },
    prints: { kind: 'power', value: 18.8, rpm: 500 },
    how: ring('Four faces, friction 0.3', [75, 125], 127, 'at the inner edge, uniform wear'),
  },
  'bhandari-11.1': {
    short: 'Machine Elements, example 11.1',
    full: 'V.\u00a0B.\u00a0Bhandari, Design of Machine Elements, example 11.1',
    build: { pressure: 1000, friction: 0.2, faces: 1, spring: 0, ...uniformWear(100, 50) },
    prints: { kind: 'torque', value: 235.619 },
    how: ring('One face, friction 0.2', [50, 100], 1000, 'at the inner edge, uniform wear'),
  },
  'bhandari-11.2': {
    short: 'Machine Elements, example 11.2',
    full: 'V.\u00a0B.\u00a0Bhandari, Design of Machine Elements, example 11.2',
    build: { pressure: 1000, friction: 0.2, faces: 1, spring: 0, ...uniformPressure(100, 50) },
    prints: { kind: 'torque', value: 366.519 },
    how: (system) =>
      `The same clutch with ${format(1000, pressure, system)} all over the ring, uniform pressure.`,
  },
};

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
