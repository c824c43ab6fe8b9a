import { faultAmount, illustrativeSettings as limits, training } from '../../engine/index.ts';
import { quoted, type QuestionNumbers } from './form.ts';

const { forward: first, high: third } = training.drive.ratios;
/** model.md 8: slip = turbine - ratio x output. */
const slipOf = (turbineRpm: number, ratio: number, outputRpm: number): number =>
  turbineRpm - ratio * outputRpm;
const limitAt = (turbineRpm: number): number =>
  Math.max(limits.ratioSlipRpm, limits.ratioSlipShare * turbineRpm);

export const slip: QuestionNumbers = {
  'ratio-first': quoted('ratio', 'ratio of first', () => first),
  'ratio-third': quoted('ratio', 'ratio of third', () => third),
  'check-slip': quoted('speed', 'engagement check', () => limits.engagementSlipRpm),
  'check-time': quoted('seconds', 'engagement check', () => limits.engagementTime),
  'limit-floor': quoted('speed', 'ratio check, least', () => limits.ratioSlipRpm),
  'limit-share': quoted(
    'percent',
    'ratio check, share of turbine speed',
    () => 100 * limits.ratioSlipShare,
  ),
  'limit-time': quoted('seconds', 'ratio check', () => limits.ratioTime),
  'raise-percent': quoted(
    'percent',
    'what the first failed check adds',
    () => 100 * (limits.pressureRaise - 1),
  ),
  'false-rpm': quoted('speed', 'false reading at rest', () => faultAmount('turbineSensor', 1)),

  'slip-first': {
    quantity: 'speed',
    what: 'first, turbine 1650, output 380 rpm',
    value: () => slipOf(1650, first, 380),
    wrong: {
      'forgot-ratio': { mistake: 'forget the ratio', value: () => 1650 - 380 },
      divided: { mistake: 'divide the output by the ratio', value: () => 1650 - 380 / first },
      'third-ratio': { mistake: 'use the ratio of third', value: () => slipOf(1650, third, 380) },
    },
  },
  'belt-slip': {
    quantity: 'speed',
    what: 'saw: motor 2880 rpm, blade 930 rpm, pulleys 3 to 1',
    value: () => slipOf(2880, 3, 930),
    wrong: {
      'forgot-ratio': { mistake: 'forget the pulleys', value: () => 2880 - 930 },
      'at-the-blade': {
        mistake: 'count at the blade instead of at the motor',
        value: () => 2880 / 3 - 930,
      },
    },
  },
  'limit-at-4000': {
    quantity: 'speed',
    what: 'ratio limit at a turbine speed of 4000 rpm',
    value: () => limitAt(4000),
    wrong: {
      'floor-only': { mistake: 'use the floor at every speed', value: () => limits.ratioSlipRpm },
      added: {
        mistake: 'add the two limits instead of taking the larger',
        value: () => limits.ratioSlipRpm + 4000 * limits.ratioSlipShare,
      },
      'engagement-limit': {
        mistake: 'take the limit of the engagement check',
        value: () => limits.engagementSlipRpm,
      },
    },
  },
  'raised-command': {
    quantity: 'pressure',
    what: '800 kPa after the first failed check',
    value: () => 800 * limits.pressureRaise,
    wrong: {
      'thirty-units': { mistake: 'add the number 30 instead of 30 %', value: () => 800 + 30 },
      'by-130': {
        mistake: 'add 130 % instead of going to 130 %',
        value: () => 800 * (1 + limits.pressureRaise),
      },
    },
  },
  'slip-as-seen': {
    quantity: 'speed',
    what: 'slip computed from a false 300 rpm at standstill, first selected',
    value: () => slipOf(faultAmount('turbineSensor', 1), first, 0),
    wrong: {
      'true-slip': {
        mistake: 'let the controller know better than its sensor',
        value: () => slipOf(0, first, 0),
      },
      'times-ratio': {
        mistake: 'multiply by the ratio',
        value: () => faultAmount('turbineSensor', 1) * first,
      },
    },
  },
};
