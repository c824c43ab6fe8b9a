import { engage, makeCar } from '../car/index.ts';
import {
  findRoot,
  litresPerMinute,
  pumpSlipPerPascal,
  training,
  type FaultSet,
  type Plant,
} from '../engine/index.ts';
import { fluidState, read, tapKpa } from './ask.ts';
import { degC, entry, kPa, lmin, rpm, seconds, times, type Entries } from './entry.ts';

/** As worn as the one that the lesson's simulation runs. */
const wornPump: FaultSet = { pumpWear: { severity: 0.2 } };
const halfWornPump: FaultSet = { pumpWear: { severity: 0.18 } };
const moreWornPump: FaultSet = { pumpWear: { severity: 0.25 } };
const wornBore: FaultSet = { regulatorBore: { severity: 0.6 } };
const lowCommand: FaultSet = { pressureControl: { severity: 0.44 } };
const clogged: FaultSet = { filter: { severity: 0.35 } };
const worstFilter: FaultSet = { filter: { severity: 1 } };
const foam: FaultSet = { lowFluid: { severity: 0.72 } };

const { idle, load } = training.testPoints;
const displacementCm3 = training.pump.displacement * 1e6;

type At = keyof Plant['testPoints'];
const at = (tempC: number, faults: FaultSet = {}, point: At = 'idle') =>
  read({ faults, tempC, point });
const line = (what: string, faults: FaultSet, tempC: number, point: At = 'idle') =>
  kPa(at(tempC, faults, point).lineKpa, `line, ${what}, ${tempC} °C, ${point}`);
const clutch = (what: string, faults: FaultSet, tempC: number) =>
  kPa(tapKpa({ faults, tempC }), `forward clutch, ${what}, ${tempC} °C, idle`);
const left = (what: string, faults: FaultSet, tempC: number) =>
  lmin(at(tempC, faults).leftOverLmin, `left over, ${what}, ${tempC} °C, idle`);
const draws = (what: string, faults: FaultSet, tempC: number, point: At = 'idle') =>
  lmin(at(tempC, faults, point).intakeLmin, `pump draws, ${what}, ${tempC} °C, ${point}`);

/** The lines of one flow budget, by the name that goes in front of each. */
function budget(name: string, what: string, tempC: number, faults: FaultSet = {}) {
  const state = at(tempC, faults);
  const where = `${what}, ${tempC} °C, idle`;
  return {
    [`${name}-pump`]: lmin(state.pumpLmin, `pump delivers, ${where}`),
    [`${name}-clearances`]: lmin(state.clearancesLmin, `line clearances, ${where}`),
    [`${name}-bleed`]: lmin(state.bleedLmin, `line bleeds, ${where}`),
    [`${name}-clutch`]: lmin(state.clutches.forward.feedLmin, `forward clutch, ${where}`),
    [`${name}-left`]: lmin(state.leftOverLmin, `left over, ${where}`),
  };
}
const slips = (what: string, tempC: number, faults: FaultSet = {}) =>
  lmin(at(tempC, faults).slipLmin, `pump slip, ${what}, ${tempC} °C, idle`);

/** Warm fluid until nothing is left over: spare flow while there is some, missing pressure after that. */
function runsOut(faults: FaultSet, what: string) {
  const spare = (tempC: number): number => {
    const state = at(tempC, faults);
    return state.lineAtCommand ? state.leftOverLmin : state.lineKpa - state.lineCommandKpa;
  };
  return degC(findRoot(spare, 20, 140).root, `nothing left over at idle, ${what}`);
}

/** What the half-worn pump would slip if the line stayed at its idle command. */
const wishedSlip = litresPerMinute(
  pumpSlipPerPascal(makeCar({ faults: halfWornPump }).plant.pump, fluidState(100).dynamic) *
    idle.line,
);
const hot = at(100);
const hotClutch = hot.clutches.forward;

const stopsAfter = (tempC: number, faults: FaultSet, what: string) =>
  seconds(engage(makeCar({ faults }), { tempC }).stoppedAfter, `turbine stopped, ${what}`);

export const pumpAndRegulator: readonly Entries[] = [
  {
    'pump-turn': entry('volume', displacementCm3, 'pump displacement, one turn'),
    'speed-load': rpm(load.engineRpm, 'engine speed of the second test point'),
    'pump-draws-idle': draws('healthy', {}, 100, 'idle'),
    'pump-draws-load': draws('healthy', {}, 100, 'load'),
    'line-command-idle': kPa(idle.line / 1e3, 'line commanded at idle'),
    'line-command-load': kPa(load.line / 1e3, 'line commanded at 1500 rpm'),
  },
  budget('budget-cold', 'healthy', 20),
  budget('budget-warm', 'healthy', 80),
  {
    'budget-warm-slip': slips('healthy', 80),
  },
  budget('budget-hot', 'healthy', 100),
  budget('budget-worn', 'worn pump', 60, wornPump),
  {
    'budget-worn-slip': slips('worn pump', 60, wornPump),
  },
  budget('budget-worn-80', 'worn pump', 80, wornPump),
  {
    'budget-worn-80-slip': slips('worn pump', 80, wornPump),
    'left-cold-over-hot': times(
      at(20).leftOverLmin / hot.leftOverLmin,
      'left over at idle, healthy, 20 °C over 100 °C',
    ),
    'sound-runs-out': runsOut({}, 'healthy'),
    'worn-runs-out': runsOut(wornPump, 'worn pump'),
    'worn-left-20': left('worn pump', wornPump, 20),
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
    'half-worn-slip-wished': lmin(wishedSlip, 'slip of a half-worn pump at 600 kPa, 100 °C'),
    'half-worn-short': lmin(
      wishedSlip + hot.clearancesLmin + hot.bleedLmin + hotClutch.feedLmin - hot.intakeLmin,
      'what is missing if the line were to stay at its command, half-worn pump, 100 °C, idle',
    ),
    'half-worn-line': line('half-worn pump', halfWornPump, 100),
    'more-worn-line-20': line('more worn pump', moreWornPump, 20),
    'more-worn-line-100': line('more worn pump', moreWornPump, 100),
    'more-worn-line-load': line('more worn pump', moreWornPump, 100, 'load'),
    'bore-line-20': line('worn bore', wornBore, 20),
    'bore-line-100': line('worn bore', wornBore, 100),
    'bore-line-load': line('worn bore', wornBore, 100, 'load'),
    'low-command-line-20': line('low command', lowCommand, 20),
    'low-command-line-100': line('low command', lowCommand, 100),
    'low-command-line-load': line('low command', lowCommand, 100, 'load'),
    'clogged-draws-idle-20': draws('clogged filter', clogged, 20),
    'clogged-draws-load-20': draws('clogged filter', clogged, 20, 'load'),
    'clogged-draws-idle-100': draws('clogged filter', clogged, 100),
    'clogged-line-20': line('clogged filter', clogged, 20),
    'clogged-left-20': left('clogged filter', clogged, 20),
    'clogged-stops-0': stopsAfter(0, clogged, 'clogged filter, 0 °C'),
    'sound-stops-0': stopsAfter(0, {}, 'healthy, 0 °C'),
    'worst-filter-draws-idle-100': draws('worst filter', worstFilter, 100),
    'foam-draws-idle': draws('air in the fluid', foam, 100),
    'foam-line-100': line('air in the fluid', foam, 100),
  },
];
