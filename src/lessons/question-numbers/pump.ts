import { litresPerMinute, training } from '../../engine/index.ts';
import { steady } from './ask-engine.ts';
import { quoted, type QuestionNumbers } from './form.ts';

const displacementCm3 = training.pump.displacement * 1e6;
const hot = () => steady({ tempC: 100 });
const wear = { pumpWear: { severity: 0.25 } };
const bore = { regulatorBore: { severity: 0.6 } };
const weakControl = { pressureControl: { severity: 0.44 } };
const filter = { filter: { severity: 1 } };

export const pump: QuestionNumbers = {
  'pump-displacement': quoted('volume', 'displacement of one turn', () => displacementCm3),
  'pump-flow-hot': quoted('flow', 'pump at idle, 100 °C', () => hot().pumpLmin),
  'clearances-hot': quoted('flow', 'line clearances at idle, 100 °C', () => hot().clearancesLmin),
  'bleed-hot': quoted('flow', 'bleed holes at idle, 100 °C', () => hot().bleedLmin),
  'forward-leak-hot': quoted(
    'flow',
    'forward clutch at idle, 100 °C',
    () => hot().leakLmin.forward,
  ),
  'left-cold': quoted('flow', 'left over at idle, 20 °C', () => steady({ tempC: 20 }).leftOverLmin),
  'wear-line-cold': quoted(
    'pressure',
    'line, worn pump, 20 °C idle',
    () => steady({ tempC: 20, faults: wear }).lineKpa,
  ),
  'wear-line-hot': quoted(
    'pressure',
    'line, worn pump, 100 °C idle',
    () => steady({ tempC: 100, faults: wear }).lineKpa,
  ),
  'wear-line-hot-load': quoted(
    'pressure',
    'line, worn pump, 100 °C load',
    () => steady({ tempC: 100, at: 'load', faults: wear }).lineKpa,
  ),
  'bore-line-cold': quoted(
    'pressure',
    'line, worn bore, 20 °C idle',
    () => steady({ tempC: 20, faults: bore }).lineKpa,
  ),
  'bore-line-hot': quoted(
    'pressure',
    'line, worn bore, 100 °C idle',
    () => steady({ tempC: 100, faults: bore }).lineKpa,
  ),
  'bore-line-hot-load': quoted(
    'pressure',
    'line, worn bore, 100 °C load',
    () => steady({ tempC: 100, at: 'load', faults: bore }).lineKpa,
  ),
  'control-line-cold': quoted(
    'pressure',
    'line, weak control, 20 °C idle',
    () => steady({ tempC: 20, faults: weakControl }).lineKpa,
  ),
  'control-line-hot': quoted(
    'pressure',
    'line, weak control, 100 °C idle',
    () => steady({ tempC: 100, faults: weakControl }).lineKpa,
  ),
  'filter-idle-cold': quoted(
    'flow',
    'intake, worst filter, 20 °C idle',
    () => steady({ tempC: 20, faults: filter }).intakeLmin,
  ),
  'filter-idle-hot': quoted(
    'flow',
    'intake, worst filter, 100 °C idle',
    () => steady({ tempC: 100, faults: filter }).intakeLmin,
  ),

  'pump-at-idle': {
    quantity: 'flow',
    what: 'what the pump draws at 700 rpm',
    value: () => litresPerMinute((training.pump.displacement * 700) / 60),
    wrong: {
      'per-second': {
        mistake: 'stop at one second',
        value: () => litresPerMinute((training.pump.displacement * 700) / 60) / 60,
      },
      tenfold: {
        mistake: 'take a litre for a hundred cubic centimetres',
        value: () => (displacementCm3 * 700) / 100,
      },
      doubled: {
        mistake: 'count the fluid twice, once in and once out',
        value: () => (2 * displacementCm3 * 700) / 1000,
      },
    },
  },
  'left-hot': {
    quantity: 'flow',
    what: 'left over at idle, 100 °C',
    value: () => hot().leftOverLmin,
    wrong: {
      'forgot-clutch': {
        mistake: 'leave out what the clutch circuit loses',
        value: () => hot().pumpLmin - hot().clearancesLmin - hot().bleedLmin,
      },
      'forgot-clearances': {
        mistake: 'leave out the clearances',
        value: () => hot().pumpLmin - hot().bleedLmin - hot().leakLmin.forward,
      },
      'forgot-bleed': {
        mistake: 'leave out the bleed holes',
        value: () => hot().pumpLmin - hot().clearancesLmin - hot().leakLmin.forward,
      },
      'all-of-it': {
        mistake: 'give the converter all that the pump brings',
        value: () => hot().pumpLmin,
      },
    },
  },
  'control-line-load': {
    quantity: 'pressure',
    what: 'line, weak control, 20 °C load, command 1000 kPa',
    value: () => steady({ tempC: 20, at: 'load', faults: weakControl }).lineKpa,
    wrong: {
      'same-loss': {
        mistake: 'take off the same number of units as at idle',
        value: () => 1000 - (600 - steady({ tempC: 20, faults: weakControl }).lineKpa),
      },
      'speed-cures': {
        mistake: 'let engine speed cure it, as it would a leak',
        value: () => steady({ tempC: 20, at: 'load' }).lineKpa,
      },
    },
  },
  'filter-fast-cold': {
    quantity: 'flow',
    what: 'intake, worst filter, 20 °C, 1500 rpm',
    value: () => steady({ tempC: 20, at: 'load', faults: filter }).intakeLmin,
    wrong: {
      'with-speed': {
        mistake: 'let flow follow engine speed',
        value: () => (steady({ tempC: 20, faults: filter }).intakeLmin * 1500) / 700,
      },
      healthy: {
        mistake: 'leave the filter out of it',
        value: () => steady({ tempC: 20, at: 'load' }).intakeLmin,
      },
    },
  },
};
