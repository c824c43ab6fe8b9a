import {
  afterSelection,
  CHECK_AFTER,
  coolestWith,
  engage,
  makeCar,
  oneFault,
  REFERENCE_CRACK_MM,
  soundCar,
  traceAt,
} from '../car/index.ts';
import { training, type Engagement } from '../engine/index.ts';
import { tapKpa } from './ask.ts';
import { IDLE_COMMAND } from './asked-for.ts';
import { degC, kPa, newtonMetres, rpm, seconds, type Entries } from './entry.ts';
import { minutesTo } from './warm-up.ts';

const cracked = makeCar({ crackMm: REFERENCE_CRACK_MM });
export const healthyCold = engage(soundCar, { tempC: 20 });
const crackCold = engage(cracked, { tempC: 20 });
const crackHot = engage(cracked, { tempC: 100 });
/** The valve that fades hot, as the lessons before have it. */
const valveHot = engage(makeCar({ faults: oneFault('clutchControl', 80) }), { tempC: 100 });

const healthyIn = (tempC: number) =>
  seconds(engage(soundCar, { tempC }).stoppedAfter, `turbine stops, healthy, ${tempC} °C`);
const filled = (run: Engagement, what: string) =>
  seconds(afterSelection(run, 'clutch filled'), `clutch filled, ${what}`);
/** From the clutch full to the turbine at rest [s]; the lesson has runs that get there. */
export const riseOf = (run: Engagement): number =>
  (run.stoppedAfter ?? NaN) - (afterSelection(run, 'clutch filled') ?? NaN);
/** The last moment before the brake is let go. */
const WAITING = 2.4;
/** What the clutch could hold then with the crack, cold [N·m]. */
export const holdsCrackCold = traceAt(crackCold, 'capacity', WAITING);

/** Where the pressure of the cracked circuit settles, standing at idle, if nobody lets go of the brake [kPa]. */
const settled = (tempC: number): number =>
  tapKpa({ tempC, crackMm: REFERENCE_CRACK_MM, ...IDLE_COMMAND });
const commandKpa = training.commands.clutchLeast / 1e3;

/** The coolest fluid at which this crack makes the training controller say "not finished". */
const lateFrom = coolestWith(cracked, 'engagement not finished');

export const turbineMustStop: Entries = {
  'stop-turbine-free': rpm(traceAt(healthyCold, 'turbineRpm', 0), 'turbine in Park at idle'),
  'stop-command-idle': kPa(commandKpa, 'clutch command while standing at idle'),
  'check-time': seconds(CHECK_AFTER, 'when the training controller looks'),
  'stop-healthy-20': healthyIn(20),
  'stop-healthy-100': healthyIn(100),
  'stop-healthy-minus-10': healthyIn(-10),
  'stop-healthy-minus-20': healthyIn(-20),
  'stop-rise-healthy': seconds(
    riseOf(healthyCold),
    'clutch full to turbine stopped, healthy, 20 °C',
  ),
  'stop-rise-crack-20': seconds(riseOf(crackCold), 'clutch full to turbine stopped, crack, 20 °C'),
  'stop-crack-20': seconds(crackCold.stoppedAfter, 'turbine stops, 0.25 mm, 20 °C'),
  'stop-filled-healthy-20': filled(healthyCold, 'healthy, 20 °C'),
  'stop-filled-crack-20': filled(crackCold, '0.25 mm, 20 °C'),
  'stop-filled-crack-100': filled(crackHot, '0.25 mm, 100 °C'),
  'stop-filled-valve-100': filled(valveHot, 'valve fades hot, 100 °C'),
  'stop-turbine-valve-100': rpm(
    traceAt(valveHot, 'turbineRpm', WAITING),
    'turbine before the brake is let go, valve fades hot, 100 °C',
  ),
  'stop-turbine-crack-100-check': rpm(
    traceAt(crackHot, 'turbineRpm', CHECK_AFTER),
    'turbine at the check, 0.25 mm, 100 °C',
  ),
  'stop-turbine-crack-100-waiting': rpm(
    traceAt(crackHot, 'turbineRpm', WAITING),
    'turbine before the brake is let go, 0.25 mm, 100 °C',
  ),
  'stop-had-crack-100': kPa(
    traceAt(crackHot, 'clutchPressure', WAITING) / 1e3,
    'clutch pressure before the brake is let go, still rising, 0.25 mm, 100 °C',
  ),
  'stop-settles-crack-20': kPa(settled(20), 'clutch pressure, settled at idle, 0.25 mm, 20 °C'),
  'stop-settles-crack-100': kPa(settled(100), 'clutch pressure, settled at idle, 0.25 mm, 100 °C'),
  'stop-holds-crack-20': newtonMetres(holdsCrackCold, 'clutch holds at idle, 0.25 mm, 20 °C'),
  'stop-holds-crack-100': newtonMetres(
    traceAt(crackHot, 'capacity', WAITING),
    'clutch holds before the brake is let go, 0.25 mm, 100 °C',
  ),
  'stop-late-from': degC(lateFrom, 'from here on a 0.25 mm crack makes the engagement check fail'),
  'stop-minutes-gentle': minutesTo(lateFrom, 'gentle'),
  'stop-minutes-idling': minutesTo(lateFrom, 'idling'),
  'stop-minutes-pulling': minutesTo(lateFrom, 'pulling'),
};
