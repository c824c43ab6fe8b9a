import { commandsAt, training, type FaultSet } from '../engine/index.ts';
import { read, tapKpa } from './ask.ts';
import { kPa, percent, type Entries } from './entry.ts';

/** Car 1, car 6, car 2 and car 5 of the bench. */
const hole: FaultSet = { openPort: { severity: 0.7, circuit: 'forward' } };
const gap: FaultSet = { pistonSeal: { severity: 0.7, circuit: 'forward' } };
const pump: FaultSet = { pumpWear: { severity: 0.4 } };
const bore: FaultSet = { regulatorBore: { severity: 0.6 } };

const idle = commandsAt(training, 'idle', 'forward');
const fast = commandsAt(training, 'load', 'forward');
const reverse = commandsAt(training, 'idle', 'reverse');
const line = (faults: FaultSet, point: 'idle' | 'load'): number =>
  read({ faults, tempC: 100, point }).lineKpa;
const share = (kpa: number, command: number): number => (100 * kpa) / (command / 1e3);

const pumpIdle = line(pump, 'idle');

export const pressuresHotAndCold: Entries = {
  'pressures-gauge-full': kPa(2000, 'full scale of a gauge, an example from a manual'),
  'pressures-hole-20': kPa(tapKpa({ faults: hole, tempC: 20 }), 'missing ball, tap, idle, 20 °C'),
  'pressures-hole-100': kPa(tapKpa({ faults: hole, tempC: 100 }), 'missing ball, tap, 100 °C'),
  'pressures-gap-20': kPa(tapKpa({ faults: gap, tempC: 20 }), 'cut piston seal, tap, 20 °C'),
  'pressures-gap-100': kPa(tapKpa({ faults: gap, tempC: 100 }), 'cut piston seal, tap, 100 °C'),
  'pressures-tap-command': kPa(idle.clutch / 1e3, 'commanded of the forward clutch, idle'),
  'pressures-line-command': kPa(idle.line / 1e3, 'commanded of the line in Drive, idle'),
  'pressures-reverse-command': kPa(reverse.line / 1e3, 'commanded of the line in Reverse, idle'),
  'pressures-pump-idle': kPa(pumpIdle, 'worn pump, line in Drive, 700 rpm, 100 °C'),
  'pressures-pump-idle-share': percent(share(pumpIdle, idle.line), 'the same, of its command'),
  'pressures-pump-fast-share': percent(
    share(line(pump, 'load'), fast.line),
    'worn pump at 1500 rpm, of its command',
  ),
  'pressures-bore-idle-share': percent(
    share(line(bore, 'idle'), idle.line),
    'worn bore, line in Drive, 700 rpm, of its command',
  ),
  'pressures-bore-fast-share': percent(
    share(line(bore, 'load'), fast.line),
    'worn bore at 1500 rpm, of its command',
  ),
};
