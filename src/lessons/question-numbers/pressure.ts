import { needs } from '../../car/index.ts';
import { clutchPressureFor, clutchTorque, training } from '../../engine/index.ts';
import { plantWith, steady } from './ask-engine.ts';
import { quoted, type QuestionNumbers } from './form.ts';

const clutch = training.clutches.forward;
const areaCm2 = clutch.area * 1e4;
/** Torque for each newton that presses the plates together [N·m/N]. */
const armM = clutch.friction * clutch.faces * clutch.meanRadius;
const forceN = (kPa: number): number => kPa * 1e3 * clutch.area;
const glazed = { ...clutch, friction: clutch.friction / 2 };
const worn = { frictionWear: { severity: 1 } };

export const pressure: QuestionNumbers = {
  'clutch-area': quoted('area', 'piston area', () => areaCm2),
  'clutch-spring': quoted('force', 'return spring at apply', () => clutch.springForce),
  'clutch-force-400': quoted('force', 'fluid on the piston at 400 kPa', () => forceN(400)),
  'healthy-hot-take-off': quoted(
    'pressure',
    'forward clutch, healthy, 100 °C, load',
    () => steady({ tempC: 100, at: 'load' }).clutchKpa.forward,
  ),
  'holds-worn-hot': quoted(
    'torque',
    'clutch with friction worn to the worst, 100 °C, load',
    () => steady({ tempC: 100, at: 'load', faults: worn }).holdsNm.forward,
  ),
  'holds-healthy-hot': quoted(
    'torque',
    'healthy clutch, 100 °C, load',
    () => steady({ tempC: 100, at: 'load' }).holdsNm.forward,
  ),
  'firm-torque': quoted('torque', 'torque of a firm take-off', () => needs.firm.torqueNm),
  'holds-at-90': quoted('torque', 'clutch at 90 kPa', () =>
    clutchTorque(plantWith().clutches.forward, 90e3),
  ),

  'piston-force': {
    quantity: 'force',
    what: 'force of 400 kPa on the clutch piston',
    value: () => forceN(400),
    wrong: {
      'spring-added': {
        mistake: 'add the spring to what the fluid does',
        value: () => forceN(400) + clutch.springForce,
      },
      'spring-taken': {
        mistake: 'take the spring off already, which was not asked',
        value: () => forceN(400) - clutch.springForce,
      },
      divided: { mistake: 'divide the pressure by the area', value: () => 400e3 / areaCm2 },
    },
  },
  'jack-force': {
    quantity: 'force',
    what: 'workshop press: 300 N on 2 cm², ram of 40 cm²',
    value: () => (300 / 2) * 40,
    wrong: {
      'same-force': { mistake: 'pass the force on instead of the pressure', value: () => 300 },
      'upside-down': { mistake: 'turn the areas upside down', value: () => (300 * 2) / 40 },
    },
  },
  'torque-at-400': {
    quantity: 'torque',
    what: 'what the clutch holds at 400 kPa',
    value: () => clutchTorque(clutch, 400e3),
    wrong: {
      'forgot-spring': { mistake: 'forget the spring', value: () => armM * forceN(400) },
      'one-face': {
        mistake: 'count one face only',
        value: () => clutchTorque(clutch, 400e3) / clutch.faces,
      },
      diameter: {
        mistake: 'use the diameter for the radius',
        value: () => 2 * clutchTorque(clutch, 400e3),
      },
    },
  },
  'pressure-for-200': {
    quantity: 'pressure',
    what: 'pressure to hold 200 N·m',
    value: () => clutchPressureFor(clutch, 200) / 1e3,
    wrong: {
      'forgot-spring': {
        mistake: 'forget the spring',
        value: () => 200 / armM / clutch.area / 1e3,
      },
      'spring-helps': {
        mistake: 'let the spring help instead of paying for it',
        value: () => (200 / armM - clutch.springForce) / clutch.area / 1e3,
      },
    },
  },
  'spring-pressure': {
    quantity: 'pressure',
    what: 'pressure that only balances the spring',
    value: () => clutchPressureFor(clutch, 0) / 1e3,
    wrong: {
      multiplied: {
        mistake: 'multiply spring by area',
        value: () => (clutch.springForce * areaCm2) / 1e3,
      },
      'per-face': {
        mistake: 'share the spring out among the faces',
        value: () => clutchPressureFor(clutch, 0) / 1e3 / clutch.faces,
      },
    },
  },
  'worn-torque-at-400': {
    quantity: 'torque',
    what: 'what the clutch holds at 400 kPa with half the friction',
    value: () => clutchTorque(glazed, 400e3),
    wrong: {
      unchanged: { mistake: 'judge by the gauge alone', value: () => clutchTorque(clutch, 400e3) },
      'half-pressure': {
        mistake: 'halve the pressure instead of the friction',
        value: () => clutchTorque(clutch, 200e3),
      },
    },
  },
};
