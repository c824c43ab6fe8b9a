import { coolestWith, letsGoAtC, makeCar, REFERENCE_CRACK_MM, type Asked } from '../car/index.ts';
import { training } from '../engine/index.ts';
import { degC, kPa, type Entries } from './entry.ts';

/*
 * One crack, several temperatures at which it lets go: each belongs to what was asked for. The
 * steady tests of lesson 3 hold the command fixed, the controller of lesson 7 moves it. Lessons 3
 * and 7 print them side by side so that nobody takes one for a contradiction of the other.
 */
const car = makeCar({ crackMm: REFERENCE_CRACK_MM });
const lets = (tempC: number, what: string) =>
  degC(tempC, `${REFERENCE_CRACK_MM} mm crack: ${what}`);

const { lineLeast, clutchLeast } = training.commands;
/** What the controller asks for at idle: the least it may (the model's section 7). */
export const IDLE_COMMAND: Omit<Asked, 'tempC'> = {
  lineKpa: lineLeast / 1e3,
  clutchKpa: clutchLeast / 1e3,
};

export const askedFor: Entries = {
  'clutch-command-load': kPa(training.testPoints.load.clutch / 1e3, 'clutch commanded at 1500 rpm'),
  'crossing-default-load': lets(
    letsGoAtC(car, 'firm', { point: 'load' }),
    'firm take-off up to here, line and clutch commanded for load',
  ),
  'stop-idle-to': lets(
    letsGoAtC(car, 'standing', IDLE_COMMAND),
    'holds at idle up to here against the command of the engagement',
  ),
  'stop-raise-from': lets(
    coolestWith(car, 'pressure raised'),
    'from here on the ratio check fails once as the car pulls away',
  ),
  'stop-code-from': lets(coolestWith(car, 'code stored'), 'from here on it fails twice: code'),
};
