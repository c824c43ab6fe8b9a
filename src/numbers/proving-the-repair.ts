import { commandsAt, training } from '../engine/index.ts';
import { readingOf } from '../car/readings.ts';
import { makeCar, oneFault, type Car } from '../car/car.ts';
import { COMPLAINT_C, type Repair } from '../car/repair-names.ts';
import { repaired } from '../car/repairs.ts';
import { standsAfter } from '../car/stands-after.ts';
import { doubtOf, errorAt, SAME_C } from '../diagnosis/before-after.ts';
import { isNumeric, LONGEST_STOP, testOf } from '../diagnosis/tests.ts';
import { degC, entry, kPa, seconds, type Entries } from './entry.ts';

const tapTest = testOf('clutch.forward.700.hot');
if (!isNumeric(tapTest)) throw new Error('The tap is read in numbers.');
const tap = (repair: Repair, tempC: number): number =>
  readingOf(repaired(repair), { tempC }).clutches.forward.kPa;
const error = (kpa: number): number => errorAt(tapTest, kpa, 0);
const doubt = (one: number, other: number): number => doubtOf(error(one), error(other));

const COLD = 20;
const WARM = 85;
const was = tap('untouched', COMPLAINT_C);
const is = tap('sound', COMPLAINT_C);

/** The worked task, in Reverse with half the crack of the course renewed, and a pump in the one to finish. */
const NEAR = 93;
const reverse = (repair: Repair, tempC: number): number =>
  readingOf(repaired(repair), { tempC, circuit: 'reverse' }).clutches.reverse.kPa;
const [reverseWas, reverseIs] = [reverse('untouched', COMPLAINT_C), reverse('sound', NEAR)];
const pump = makeCar({ faults: oneFault('pumpWear', 40) });
const park = (car: Car, engineRpm: number): number =>
  readingOf(car, { tempC: COMPLAINT_C, applied: [], engineRpm }).lineKpa;

export const provingTheRepair: Entries = {
  'proof-hot': degC(COMPLAINT_C, 'where the complaint of the car in the bay comes'),
  'proof-warm': degC(WARM, 'ten degrees cooler'),
  'proof-same': entry('temperatureRise', SAME_C, 'what the trade calls the same temperature'),
  'proof-ten': entry('temperatureRise', COMPLAINT_C - WARM, 'between the two'),
  'proof-cold-was': kPa(tap('untouched', COLD), 'split seal, tap, idle, 20 °C'),
  'proof-cold-is': kPa(tap('sound', COLD), 'sound, tap, idle, 20 °C'),
  'proof-hot-was': kPa(was, 'split seal, tap, idle, 95 °C'),
  'proof-hot-is': kPa(is, 'sound, tap, idle, 95 °C'),
  'proof-cold-change': kPa(tap('sound', COLD) - tap('untouched', COLD), 'the same, 20 °C'),
  'proof-doubt': kPa(doubt(was, is), 'doubt on that difference'),
  'proof-each': kPa(doubtOf(error(is)), 'what one such reading may be off by'),
  'proof-half-warm': kPa(tap('half', WARM), 'half the crack, tap, idle, 85 °C'),
  'proof-sound-warm': kPa(tap('sound', WARM), 'sound, tap, idle, 85 °C'),
  'proof-half-hot': kPa(tap('half', COMPLAINT_C), 'half the crack, tap, idle, 95 °C'),
  'proof-rings-hot': kPa(tap('rings', COMPLAINT_C), 'new rings damaged going in, tap, idle, 95 °C'),
  'proof-stop-longest': seconds(LONGEST_STOP, 'longer is called never'),
  'proof-stop-is': seconds(standsAfter('sound', COMPLAINT_C), 'sound, turbine stands, 95 °C'),
  'proof-stop-half': seconds(standsAfter('half', COMPLAINT_C), 'half the crack, the same'),
  'proof-task-was': kPa(reverseWas, 'split seal, reverse tap, idle, 95 °C'),
  'proof-task-is': kPa(reverseIs, 'sound, reverse tap, idle, 93 °C'),
  'proof-task-near': degC(NEAR, 'two degrees cooler'),
  'proof-task-apart': entry('temperatureRise', COMPLAINT_C - NEAR, 'between the two'),
  'proof-task-command': kPa(
    commandsAt(training, 'idle', 'reverse').clutch / 1e3,
    'commanded of the reverse clutch, idle',
  ),
  'proof-pump-was': kPa(park(pump, 700), 'worn pump, line in Park, 700 rpm, 95 °C'),
  'proof-pump-old': kPa(park(pump, 1500), 'the same pump at 1500 rpm'),
  'proof-pump-is': kPa(park(makeCar({}), 1500), 'sound, line in Park, 1500 rpm'),
  'proof-pump-command': kPa(
    commandsAt(training, 'idle', 'forward').line / 1e3,
    'commanded of the line in Park, idle',
  ),
};
