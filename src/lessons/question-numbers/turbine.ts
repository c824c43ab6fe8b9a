import {
  RAD_S_PER_RPM,
  clutchPressureFor,
  drivetrain,
  gearbox,
  impellerTorque,
  solveEngagement,
  trainingStory,
} from '../../engine/index.ts';
import { fluidOf, plantWith, steady } from './ask-engine.ts';
import { quoted, type QuestionNumbers } from './form.ts';

const converter = { capacity: drivetrain.capacity, stallTorqueRatio: drivetrain.stallTorqueRatio };
/** Torque on a standing turbine [N·m]. */
const stallTorque = (rpm: number): number =>
  converter.stallTorqueRatio * impellerTorque(converter, rpm * RAD_S_PER_RPM, 0);
const needIdleKpa = (): number =>
  clutchPressureFor(gearbox.clutches.forward, stallTorque(drivetrain.idleRpm)) / 1e3;
/** Standing with the engine idling, the controller asks for 250 kPa and a line of 500 kPa (model.md 7). */
const idleHad = (tempC: number): number =>
  steady({ tempC, crackMm: 0.25, lineKpa: 500, clutchKpa: 250 }).clutchKpa.forward;

const engagement = (tempC: number) =>
  solveEngagement({
    plant: plantWith({}, 0.25),
    fluid: fluidOf(),
    tempC,
    range: 'drive',
    rangeSelection: 'electronic',
  });
/** Turbine speed [rpm] at so many seconds after selection. */
function turbineAfter(tempC: number, seconds: number): number {
  const { time, turbineRpm } = engagement(tempC).trace;
  const at = time.findIndex((t) => t >= trainingStory.select + seconds - 1e-6);
  return turbineRpm[at] ?? Number.NaN;
}

export const turbine: QuestionNumbers = {
  'need-at-idle': quoted('pressure', 'to hold at idle against the brake', needIdleKpa),
  'idle-had-cold': quoted('pressure', 'forward, 0.25 mm, 20 °C, command 250 kPa', () =>
    idleHad(20),
  ),
  'idle-had-hot': quoted('pressure', 'forward, 0.25 mm, 100 °C, command 250 kPa', () =>
    idleHad(100),
  ),
  'turbine-cold': quoted('speed', 'turbine 1.5 s after selection, 0.25 mm, 20 °C', () =>
    turbineAfter(20, 1.5),
  ),
  'turbine-hot': quoted('speed', 'turbine 1.5 s after selection, 0.25 mm, 100 °C', () =>
    turbineAfter(100, 1.5),
  ),
  'stopped-after-cold': quoted(
    'seconds',
    'turbine stopped, 0.25 mm, 20 °C',
    () => engagement(20).stoppedAfter ?? Number.NaN,
  ),

  'idle-stall-torque': {
    quantity: 'torque',
    what: 'turbine torque at 700 rpm, turbine standing',
    value: () => stallTorque(700),
    wrong: {
      'no-ratio': {
        mistake: 'leave out that the converter doubles the torque',
        value: () => stallTorque(700) / converter.stallTorqueRatio,
      },
      'no-square': {
        mistake: 'forget to square',
        value: () => (converter.stallTorqueRatio * 700) / converter.capacity,
      },
    },
  },
  'double-stall-torque': {
    quantity: 'torque',
    what: 'turbine torque at 1400 rpm, turbine standing',
    value: () => stallTorque(1400),
    wrong: {
      doubled: {
        mistake: 'let torque follow speed instead of its square',
        value: () => 2 * stallTorque(700),
      },
      unchanged: {
        mistake: 'take the torque of idle for every speed',
        value: () => stallTorque(700),
      },
    },
  },
  'idle-missing-hot': {
    quantity: 'pressure',
    what: 'what is missing to hold at idle, 0.25 mm, 100 °C',
    value: () => needIdleKpa() - idleHad(100),
    wrong: {
      'from-command': {
        mistake: 'count from the command instead of from what is needed',
        value: () => 250 - idleHad(100),
      },
      'over-need': {
        mistake: 'take what the command has to spare over the need',
        value: () => 250 - needIdleKpa(),
      },
    },
  },
  'seen-at-rest': {
    quantity: 'speed',
    what: 'slip at standstill with the turbine at 420 rpm',
    value: () => 420 - drivetrain.ratios.forward * 0,
    wrong: {
      'times-ratio': {
        mistake: 'multiply the turbine by the ratio',
        value: () => 420 * drivetrain.ratios.forward,
      },
      'by-ratio': {
        mistake: 'divide the turbine by the ratio',
        value: () => 420 / drivetrain.ratios.forward,
      },
    },
  },
};
