import { clutchKpa, engage, makeCar, readingOf, type Reading } from '../../car/index.ts';
import {
  findRoot,
  fluidAt,
  litresPerMinute,
  pumpSlipPerPascal,
  training,
  type FaultSet,
  type Plant,
} from '../../engine/index.ts';
import { volume } from '../../quantity/part-quantities.ts';
import { flow, seconds, speed, temperature, times } from '../../quantity/quantities.ts';
import { kiloPascals, type EngineNumber, type EngineNumbers } from './entry.ts';

const perMinute = (value: number, what: string): EngineNumber => ({ value, quantity: flow, what });

const wornPump: FaultSet = { pumpWear: { severity: 0.22 } };
const wornBore: FaultSet = { regulatorBore: { severity: 0.6 } };
const lowCommand: FaultSet = { pressureControl: { severity: 0.44 } };
const clogged: FaultSet = { filter: { severity: 0.35 } };
const halfWornPump: FaultSet = { pumpWear: { severity: 0.18 } };
const foam: FaultSet = { lowFluid: { severity: 0.72 } };

type At = keyof Plant['testPoints'];
const at = (tempC: number, faults: FaultSet = {}, point: At = 'idle'): Reading =>
  readingOf(makeCar({ faults }), { tempC, point });
const line = (what: string, faults: FaultSet, tempC: number, point: At = 'idle') =>
  kiloPascals(1e3 * at(tempC, faults, point).lineKpa, `line, ${what}, ${tempC} °C, ${point}`);
const clutch = (what: string, faults: FaultSet, tempC: number) =>
  kiloPascals(
    1e3 * clutchKpa(makeCar({ faults }), { tempC }),
    `forward clutch, ${what}, ${tempC} °C, idle`,
  );
const left = (what: string, faults: FaultSet, tempC: number, point: At = 'idle') =>
  perMinute(at(tempC, faults, point).leftOverLmin, `left over, ${what}, ${tempC} °C, ${point}`);

/** The lines of one flow budget, by the name that goes in front of each. */
function budget(name: string, what: string, tempC: number, faults: FaultSet = {}): EngineNumbers {
  const state = at(tempC, faults);
  const where = `${what}, ${tempC} °C, idle`;
  return {
    [`${name}-slip`]: perMinute(state.slipLmin, `pump slip, ${where}`),
    [`${name}-pump`]: perMinute(state.pumpLmin, `pump delivers, ${where}`),
    [`${name}-clearances`]: perMinute(state.clearancesLmin, `line clearances, ${where}`),
    [`${name}-bleed`]: perMinute(state.bleedLmin, `line bleeds, ${where}`),
    [`${name}-clutch`]: perMinute(state.clutches.forward.feedLmin, `forward clutch, ${where}`),
    [`${name}-left`]: perMinute(state.leftOverLmin, `left over, ${where}`),
  };
}

/** Warm fluid until nothing is left over: spare flow while there is some, missing pressure after that [°C]. */
function runsOut(faults: FaultSet, what: string): EngineNumber {
  const spare = (tempC: number): number => {
    const state = at(tempC, faults);
    return state.lineAtCommand ? state.leftOverLmin : state.lineKpa - state.lineCommandKpa;
  };
  const { root } = findRoot(spare, 20, 140);
  return { value: root, quantity: temperature, what: `nothing left over at idle, ${what}` };
}

const idle = training.testPoints.idle.engineRpm;
const fast = training.testPoints.load.engineRpm;
const draws = (rpm: number, tempC: number, faults: FaultSet = {}): number =>
  at(tempC, faults, rpm === idle ? 'idle' : 'load').intakeLmin;
const drawn = (rpm: number, tempC: number, faults: FaultSet, what: string): EngineNumber => ({
  value: draws(rpm, tempC, faults),
  quantity: flow,
  what: `pump draws, ${what}, ${rpm} rpm, ${tempC} °C`,
});
/** What the half-worn pump would slip if the line stayed at its idle command. */
const worn = makeCar({ faults: halfWornPump });
const wishedSlip = litresPerMinute(
  pumpSlipPerPascal(worn.plant.pump, fluidAt(worn.fluid, 100).dynamic) *
    training.testPoints.idle.line,
);

const stopsAfter = (tempC: number, faults: FaultSet, what: string): EngineNumber => {
  const { stoppedAfter } = engage(makeCar({ faults }), { tempC });
  if (stoppedAfter === null) throw new Error('The lesson says that this turbine stops.');
  return { value: stoppedAfter, quantity: seconds, what: `Drive to turbine stopped, ${what}` };
};

export const pumpNumbers: EngineNumbers = {
  'pump-turn': {
    value: training.pump.displacement * 1e6,
    quantity: volume,
    what: 'pump displacement, one turn',
  },
  'speed-load': { value: fast, quantity: speed, what: 'engine speed of the second test point' },
  'pump-draws-idle': drawn(idle, 100, {}, 'healthy'),
  'pump-draws-load': drawn(fast, 100, {}, 'healthy'),
  'line-command-idle': kiloPascals(training.testPoints.idle.line, 'line commanded at idle'),
  'line-command-load': kiloPascals(training.testPoints.load.line, 'line commanded at 1500 rpm'),
  ...budget('budget-cold', 'healthy', 20),
  ...budget('budget-warm', 'healthy', 80),
  ...budget('budget-hot', 'healthy', 100),
  ...budget('budget-worn', 'worn pump', 60, wornPump),
  ...budget('budget-worn-80', 'worn pump', 80, wornPump),
  'budget-draws': perMinute(draws(idle, 100), 'pump draws at idle'),
  'left-cold-over-hot': {
    value: at(20).leftOverLmin / at(100).leftOverLmin,
    quantity: times,
    what: 'left over at idle, healthy, 20 °C over 100 °C',
  },
  'sound-runs-out': runsOut({}, 'healthy'),
  'worn-runs-out': runsOut(wornPump, 'worn pump'),
  'worn-left-20': left('worn pump', wornPump, 20),
  'worn-left-60': left('worn pump', wornPump, 60),
  'worn-left-80': left('worn pump', wornPump, 80),
  'worn-left-100': left('worn pump', wornPump, 100),
  'worn-left-110': left('worn pump', wornPump, 110),
  'worn-line-20': line('worn pump', wornPump, 20),
  'worn-line-60': line('worn pump', wornPump, 60),
  'worn-line-80': line('worn pump', wornPump, 80),
  'worn-line-100': line('worn pump', wornPump, 100),
  'worn-line-110': line('worn pump', wornPump, 110),
  'worn-line-load': line('worn pump', wornPump, 100, 'load'),
  'worn-clutch-20': clutch('worn pump', wornPump, 20),
  'worn-clutch-60': clutch('worn pump', wornPump, 60),
  'worn-clutch-80': clutch('worn pump', wornPump, 80),
  'worn-clutch-100': clutch('worn pump', wornPump, 100),
  'worn-clutch-110': clutch('worn pump', wornPump, 110),
  'bore-line-20': line('worn bore', wornBore, 20),
  'bore-line-100': line('worn bore', wornBore, 100),
  'bore-line-load': line('worn bore', wornBore, 100, 'load'),
  'low-command-line-20': line('low command', lowCommand, 20),
  'low-command-line-100': line('low command', lowCommand, 100),
  'low-command-line-load': line('low command', lowCommand, 100, 'load'),
  'half-worn-slip-wished': perMinute(wishedSlip, 'slip of a half-worn pump at 600 kPa, 100 °C'),
  'half-worn-short': perMinute(
    wishedSlip +
      at(100).clearancesLmin +
      at(100).bleedLmin +
      at(100).clutches.forward.feedLmin -
      draws(idle, 100),
    'what is missing if the line were to stay at its command, half-worn pump, 100 °C, idle',
  ),
  'half-worn-line': line('half-worn pump', halfWornPump, 100),
  'clogged-draws-idle-20': drawn(idle, 20, clogged, 'clogged filter'),
  'clogged-draws-load-20': drawn(fast, 20, clogged, 'clogged filter'),
  'clogged-draws-idle-100': drawn(idle, 100, clogged, 'clogged filter'),
  'clogged-line-20': line('clogged filter', clogged, 20),
  'clogged-left-20': left('clogged filter', clogged, 20),
  'clogged-left-load-20': left('clogged filter', clogged, 20, 'load'),
  'sound-left-load-20': left('healthy', {}, 20, 'load'),
  'clogged-stops-0': stopsAfter(0, clogged, 'clogged filter, 0 °C'),
  'sound-stops-0': stopsAfter(0, {}, 'healthy, 0 °C'),
  'foam-draws-idle': drawn(idle, 100, foam, 'air in the fluid'),
  'foam-line-20': line('air in the fluid', foam, 20),
  'foam-line-100': line('air in the fluid', foam, 100),
};
