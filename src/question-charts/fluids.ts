import { REFERENCE_CRACK_MM } from '../car/index.ts';
import {
  driveHeat,
  fluidAt,
  fluidClasses,
  gapFlow,
  holeArea,
  holeFlow,
  litresPerMinute,
  makeFluid,
  training,
  trainingLump,
  warmedTo,
  type DriveKind,
} from '../engine/index.ts';
import { along, steps, type Recipe } from './recipe.ts';
import { words } from './words.en.ts';

const FROM_C = 20;
const TO_C = 110;
const temperatures = steps(FROM_C, TO_C, 30);
const temperature = {
  label: words.temperature,
  quantity: 'temperature',
  min: FROM_C,
  max: TO_C,
} as const;
const tableAt = [FROM_C, 40, 60, 80, 100];
const LEAK_PA = 400e3;
const inCar = makeFluid(training.fluid);

const crack = (tempC: number): number =>
  litresPerMinute(
    gapFlow(
      { ...training.leaks.forward.transferSeal, height: REFERENCE_CRACK_MM / 1e3 },
      LEAK_PA,
      fluidAt(inCar, tempC),
    ).flow,
  );
const hole = (tempC: number): number => {
  const { density, kinematic } = fluidAt(inCar, tempC);
  return litresPerMinute(holeFlow(holeArea(1.5e-3), LEAK_PA, density, kinematic));
};

const LONGEST_MIN = 60;
const start = { fluidC: FROM_C, coolantC: FROM_C, ambientC: FROM_C };
const driven = (kind: DriveKind) =>
  along(
    steps(0, LONGEST_MIN, 30),
    (minutes) =>
      warmedTo(trainingLump, { ...start, heat: driveHeat[kind], time: minutes * 60 }).fluidC,
  );

/** What the fluid is and does at each temperature, and how it comes there. */
export const fluids = {
  'gap-and-hole': (): Recipe => ({
    about: words.twoLeaks,
    x: temperature,
    y: { label: words.leak, quantity: 'flow', min: 0, max: 8 },
    lines: [along(temperatures, crack), along(temperatures, hole)],
    tableAt,
  }),
  'two-fluids': (): Recipe => ({
    about: words.twoFluids,
    x: temperature,
    y: { label: words.viscosity, quantity: 'kinematicViscosity', min: 0, max: 100 },
    lines: (['standard', 'ultra-low'] as const).map((name) =>
      along(temperatures, (tempC) => fluidAt(makeFluid(fluidClasses[name]), tempC).kinematic * 1e6),
    ),
    tableAt,
  }),
  'three-drives': (): Recipe => ({
    about: words.threeDrives,
    x: { label: words.minutes, quantity: 'minutes', min: 0, max: LONGEST_MIN },
    y: { label: words.temperature, quantity: 'temperature', min: 0, max: 140 },
    lines: [driven('idling'), driven('gentle'), driven('pulling')],
    tableAt: [0, 15, 30, 45, LONGEST_MIN],
  }),
} satisfies Record<string, () => Recipe>;
