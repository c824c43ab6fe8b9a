/**
 * How a car differs from the model in ways that several readings share: one value for each car, which the readings
 * themselves narrow down (specification of the planner, section 3; assumptions of this site).
 */
import { CIRCUITS, type Circuit, type FluidSpec, type Plant } from '../engine/index.ts';
import type { Warmth } from './tests.ts';

/** A car to be read, with the fluid it is filled with and how warm that truly is [°C]. */
export interface Subject {
  readonly plant: Plant;
  readonly fluid: FluidSpec;
  readonly warmth: Readonly<Record<Warmth, number>>;
  /** Its engine turns so many times as fast as a test asks; 1 where nothing is said. */
  readonly engineFactor?: number;
}

export interface Nuisance {
  readonly id: string;
  /** Half the width of its uniform law, as a share of what it changes, or in °C. */
  readonly half: number;
  /** The subject with it moved by so much. */
  readonly move: (subject: Subject, by: number) => Subject;
  /** Which readings feel it; all where nothing is said. */
  readonly warmth?: Warmth;
  readonly circuit?: Circuit;
}

/** A difference of the transmission itself, by a factor. */
export const inPlant =
  (change: (plant: Plant, factor: number) => Plant) =>
  (subject: Subject, by: number): Subject => ({
    ...subject,
    plant: change(subject.plant, 1 + by),
  });
type TransferSeal = Plant['leaks']['forward']['transferSeal'];
/** A transmission with the transfer seal of each circuit changed. */
export function withSeals(
  plant: Plant,
  change: (seal: TransferSeal) => Partial<TransferSeal>,
): Plant {
  const leaks = Object.fromEntries(
    CIRCUITS.map((circuit) => {
      const { transferSeal, ...others } = plant.leaks[circuit];
      return [circuit, { ...others, transferSeal: { ...transferSeal, ...change(transferSeal) } }];
    }),
  ) as unknown as Plant['leaks'];
  return { ...plant, leaks };
}

const rings = (circuit: Circuit): Nuisance => ({
  id: `rings.${circuit}`,
  half: 0.1,
  circuit,
  move: inPlant((plant, factor) => {
    const of = plant.leaks[circuit];
    const moved = { ...of, rings: { ...of.rings, height: of.rings.height * factor } };
    return { ...plant, leaks: { ...plant.leaks, [circuit]: moved } };
  }),
});
const temperature = (warmth: Warmth): Nuisance => ({
  id: `temperature.${warmth}`,
  half: 3,
  warmth,
  move: (subject, by) => ({
    ...subject,
    warmth: { ...subject.warmth, [warmth]: subject.warmth[warmth] + by },
  }),
});

/** The twelve that the table carries. The gain of the gauge is the thirteenth: 1.5 % of every pressure, sd. */
export const NUISANCES: readonly Nuisance[] = [
  {
    id: 'clearances',
    half: 0.1,
    move: inPlant((plant, factor) => ({
      ...plant,
      lineClearances: {
        ...plant.lineClearances,
        height: plant.lineClearances.height * factor,
      },
    })),
  },
  ...CIRCUITS.map(rings),
  {
    id: 'pump',
    half: 0.2,
    move: inPlant((plant, factor) => ({
      ...plant,
      pump: { ...plant.pump, slip: plant.pump.slip * factor },
    })),
  },
  {
    id: 'feed',
    half: 0.1,
    move: inPlant((plant, factor) => ({
      ...plant,
      feed: { ...plant.feed, area: plant.feed.area * factor },
    })),
  },
  {
    id: 'kv40',
    half: 0.1,
    move: (subject, by) => ({
      ...subject,
      fluid: { ...subject.fluid, kv40CSt: subject.fluid.kv40CSt * (1 + by) },
    }),
  },
  {
    id: 'kv100',
    half: 0.1,
    move: (subject, by) => ({
      ...subject,
      fluid: { ...subject.fluid, kv100CSt: subject.fluid.kv100CSt * (1 + by) },
    }),
  },
  {
    id: 'crackWidth',
    half: 0.2,
    move: inPlant((plant, factor) => withSeals(plant, (seal) => ({ width: seal.width * factor }))),
  },
  temperature('hot'),
  temperature('cold'),
  temperature('frost'),
];
/** Half the width of a uniform law as a standard deviation. */
export const sdOf = (half: number): number => half / Math.sqrt(3);
/** Gain of a shop gauge, sd as a share of what it shows. */
export const GAUGE_GAIN = 0.015;
