import {
  engage,
  makeCar,
  needs,
  REFERENCE_CRACK_MM,
  stalledTorque as stallTorque,
  traceAt,
} from '../../car/index.ts';
import { training } from '../../engine/index.ts';
import { steady } from './ask-engine.ts';
import { quoted, type QuestionNumbers } from './form.ts';

const { drive } = training;
const cracked = makeCar({ crackMm: REFERENCE_CRACK_MM });
const needIdleKpa = (): number => needs.standing.kPa;
/** Standing with the engine idling, the controller asks for 250 kPa and a line of 500 kPa (model.md 7). */
const idleHad = (tempC: number): number =>
  steady({ tempC, crackMm: REFERENCE_CRACK_MM, lineKpa: 500, clutchKpa: 250 }).clutchKpa.forward;

const engagement = (tempC: number) => engage(cracked, { tempC });

export const turbine: QuestionNumbers = {
  'need-at-idle': quoted('pressure', 'to hold at idle against the brake', needIdleKpa),
  'idle-had-cold': quoted('pressure', 'forward, 0.25 mm, 20 °C, command 250 kPa', () =>
    idleHad(20),
  ),
  'idle-had-hot': quoted('pressure', 'forward, 0.25 mm, 100 °C, command 250 kPa', () =>
    idleHad(100),
  ),
  'turbine-hot': quoted('speed', 'turbine 2.4 s after selection, 0.25 mm, 100 °C', () =>
    traceAt(engagement(100), 'turbineRpm', 2.4),
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
        value: () => stallTorque(700) / drive.stallTorqueRatio,
      },
      'no-square': {
        mistake: 'forget to square',
        value: () => (drive.stallTorqueRatio * 700) / drive.capacity,
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
    value: () => 420 - drive.ratios.forward * 0,
    wrong: {
      'times-ratio': {
        mistake: 'multiply the turbine by the ratio',
        value: () => 420 * drive.ratios.forward,
      },
      'by-ratio': {
        mistake: 'divide the turbine by the ratio',
        value: () => 420 / drive.ratios.forward,
      },
    },
  },
};
