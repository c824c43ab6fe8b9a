/** What a pump brings, what its circuits lose, and what a gauge at a tap has to say of it. */
import { letsGo, needOf } from '../car/index.ts';
import {
  commandsAt,
  faultAmount,
  litresPerMinute,
  holeFlow,
  type Circuit,
  type FaultSet,
} from '../engine/index.ts';
import { entry, kPa, lmin, mm, percent, rpm, times } from '../numbers/entry.ts';
import { BOXES, carOf, fluidIn, plantOf, readIn, tapIn, type Box } from './boxes.ts';
import { by, family, steps } from './family.ts';

const degC = (value: number, what = 'a chosen temperature', wrong = {}) =>
  entry('temperature', value, what, wrong);
/** A circuit that passes through the transfer seal, and one that does not. */
const SEALED = { first: 'forward', second: 'reverse' } as const satisfies Record<Box, Circuit>;
const SPARED = { first: 'high', second: 'forward' } as const satisfies Record<Box, Circuit>;
const HURT = { first: 'forward', second: 'high' } as const satisfies Record<Box, Circuit>;
const command = (box: Box, circuit: Circuit) => {
  const { line, clutch } = commandsAt(plantOf(box), 'idle', circuit);
  return { line: line / 1e3, clutch: clutch / 1e3 };
};
const near = (a: number, b: number, share: number): boolean => Math.abs(a - b) < share * b;

export const circuit = {
  'pump-draws': family({ box: BOXES, speed: steps(600, 1000, 50) }, ({ box, speed }) => {
    const turn = plantOf(box).pump.displacement * 1e6;
    const draws = readIn(box, { tempC: 90, engineRpm: speed, lineKpa: 500, clutchKpa: 300 });
    return {
      numbers: {
        turn: entry('volume', turn, 'moved each turn'),
        speed: rpm(speed, 'engine speed'),
        flow: lmin(draws.intakeLmin, 'drawn', {
          'per-second': by('stop at one second', (turn * speed) / 60e3),
          tenfold: by('slip a decimal place on the way to the unit of flow', (turn * speed) / 100),
          doubled: by('count the fluid twice, once in and once out', (2 * turn * speed) / 1000),
        }),
      },
    };
  }),
  'what-is-left': family({ box: BOXES, hot: [80, 85, 90, 95, 100] }, ({ box, hot }) => {
    const { pumpLmin, clearancesLmin, bleedLmin, clutches, leftOverLmin } = readIn(box, {
      tempC: hot,
    });
    const { feedLmin } = clutches.forward;
    return {
      numbers: {
        hot: degC(hot),
        pump: lmin(pumpLmin, 'pump brings'),
        clearances: lmin(clearancesLmin, 'clearances'),
        bleed: lmin(bleedLmin, 'bleed holes'),
        clutch: lmin(feedLmin, 'forward circuit'),
        'cold-left': lmin(readIn(box, { tempC: 20 }).leftOverLmin, 'left over, 20 °C'),
        left: lmin(leftOverLmin, 'left over', {
          'forgot-clearances': by('leave out the clearances', pumpLmin - bleedLmin - feedLmin),
          'forgot-bleed': by('leave out the bleed holes', pumpLmin - clearancesLmin - feedLmin),
          'all-of-it': by('give the converter all that the pump brings', pumpLmin),
        }),
      },
    };
  }),
  'low-command': family(
    { box: BOXES, severity: [0.3, 0.36, 0.44, 0.5, 0.6], cold: [10, 15, 20, 30] },
    ({ box, severity, cold }) => {
      const faults: FaultSet = { pressureControl: { severity } };
      const line = (tempC: number, point: 'idle' | 'load', has = faults) =>
        readIn(box, { faults: has, tempC, point }).lineKpa;
      const { idle, load } = plantOf(box).testPoints;
      return {
        numbers: {
          cold: degC(cold),
          'idle-command': kPa(idle.line / 1e3, 'commanded at idle'),
          'idle-cold': kPa(line(cold, 'idle'), 'line, idle, cold'),
          'idle-hot': kPa(line(90, 'idle'), 'line, idle, 90 °C'),
          'load-speed': rpm(load.engineRpm, 'under load'),
          'load-command': kPa(load.line / 1e3, 'commanded under load'),
          share: percent((100 * line(cold, 'idle')) / (idle.line / 1e3), 'of its command'),
          line: kPa(line(cold, 'load'), 'line, load, cold', {
            'same-loss': by(
              'take off the same number of units as at idle',
              load.line / 1e3 - (idle.line / 1e3 - line(cold, 'idle')),
            ),
            'speed-cures': by(
              'let engine speed cure it, as it would a leak',
              line(cold, 'load', {}),
            ),
          }),
        },
      };
    },
  ),
  'starved-pump': family(
    { box: BOXES, severity: [0.7, 0.8, 0.9, 1], cold: [0, 5, 10, 15, 20] },
    ({ box, severity, cold }) => {
      const faults: FaultSet = { filter: { severity } };
      const { idle, load } = plantOf(box).testPoints;
      const intake = (point: 'idle' | 'load', has: FaultSet = faults) =>
        readIn(box, { faults: has, tempC: cold, point }).intakeLmin;
      return {
        numbers: {
          cold: degC(cold),
          'idle-speed': rpm(idle.engineRpm, 'idle'),
          'load-speed': rpm(load.engineRpm, 'under load'),
          'at-idle': lmin(intake('idle'), 'pump gets at idle'),
          'at-load': lmin(intake('load'), 'pump gets under load', {
            'with-speed': by(
              'let flow follow engine speed',
              (intake('idle') * load.engineRpm) / idle.engineRpm,
            ),
            healthy: by('leave the filter out of it', intake('load', {})),
          }),
        },
      };
    },
  ),
  'share-of-the-crack': family(
    { box: BOXES, crack: steps(0.15, 0.4, 0.05), hot: [80, 90, 100] },
    ({ box, crack, hot }) => {
      const name = SEALED[box];
      const { leakLmin, leaksLmin } = readIn(box, { crackMm: crack, tempC: hot, circuit: name })
        .clutches[name];
      return {
        numbers: {
          crack: mm(crack, 'crack'),
          hot: degC(hot),
          all: lmin(leakLmin, 'lost in all'),
          rings: lmin(leaksLmin.rings, 'past the rings'),
          'crack-leak': lmin(leakLmin - leaksLmin.rings, 'through the crack', {
            'all-of-it': by('blame the crack for everything', leakLmin),
            'ring-part': by('take what the rings lose', leaksLmin.rings),
            added: by('add the rings a second time', leakLmin + leaksLmin.rings),
          }),
        },
        cases: { circuit: name },
      };
    },
  ),
  'sister-beside-rings': family(
    { box: BOXES, severity: [0.35, 0.4, 0.45, 0.5], hot: [90, 95, 100] },
    ({ box, severity, hot }) => {
      const faults: FaultSet = { sealingRings: { severity, circuit: 'forward' } };
      const worn = tapIn(box, { faults, tempC: hot });
      const sound = tapIn(box, { tempC: hot });
      const reverse = tapIn(box, { faults, tempC: hot, circuit: 'reverse' });
      return {
        numbers: {
          hot: degC(hot),
          boost: times(plantOf(box).commands.reverseFactor, 'boost of Reverse'),
          worn: kPa(worn, 'forward, worn rings'),
          sound: kPa(sound, 'forward, healthy'),
          reverse: kPa(reverse, 'reverse', {
            'same-as-forward': by('let one pair of rings hurt both clutches', worn),
            'not-boosted': by('leave out that Reverse is boosted', sound),
          }),
        },
      };
    },
  ),
  'feed-choked': family(
    { box: BOXES, severity: [0.78, 0.8, 0.82, 0.85, 0.88, 0.9], hot: [90, 95, 100, 105] },
    ({ box, severity, hot }) => {
      const faults: FaultSet = { feedRestriction: { severity } };
      const left = faultAmount('feedRestriction', severity, plantOf(box));
      const { clutch } = command(box, 'forward');
      const sound = tapIn(box, { tempC: hot });
      return {
        numbers: {
          hot: degC(hot),
          left: percent(100 * left, 'feed area left'),
          command: kPa(clutch, 'commanded'),
          sound: kPa(sound, 'healthy, hot'),
          cold: kPa(tapIn(box, { faults, tempC: 20 }), 'choked, 20 °C'),
          choked: kPa(tapIn(box, { faults, tempC: hot }), 'choked, hot', {
            'area-share': by('cut the pressure by the same share as the area', clutch * left),
            unchanged: by('let a small hole fill the clutch to full pressure in the end', sound),
          }),
        },
      };
    },
  ),
  'feed-at-drop': family(
    { box: BOXES, drop: [60, 80, 100, 120, 150, 200], more: [2, 3, 4] },
    ({ box, drop, more }) => {
      const { area } = plantOf(box).feed;
      const { density, kinematic } = fluidIn(box, 90);
      const flow = (kilopascal: number): number =>
        litresPerMinute(holeFlow(area, kilopascal * 1e3, density, kinematic));
      return {
        numbers: {
          drop: kPa(drop, 'pressure drop'),
          wide: kPa(drop * more, 'a larger drop'),
          more: times(more, 'times the drop'),
          root: times(Math.sqrt(more), 'its root'),
          before: lmin(flow(drop), 'through the hole'),
          after: lmin(flow(drop * more), 'at the larger drop', {
            followed: by('let the flow follow the pressure, as in a thin gap', more * flow(drop)),
            unchanged: by('let the hole alone set the flow', flow(drop)),
            squared: by('square the pressure instead of taking the root', more ** 2 * flow(drop)),
          }),
        },
      };
    },
  ),
  'worn-pump-fast': family(
    { box: BOXES, severity: [0.3, 0.35, 0.4, 0.45, 0.5], hot: [90, 95, 100] },
    ({ box, severity, hot }) => {
      const faults: FaultSet = { pumpWear: { severity } };
      const { idle, load } = plantOf(box).testPoints;
      const line = (point: 'idle' | 'load') => readIn(box, { faults, tempC: hot, point }).lineKpa;
      return {
        numbers: {
          hot: degC(hot),
          'idle-speed': rpm(idle.engineRpm, 'idle'),
          'load-speed': rpm(load.engineRpm, 'under load'),
          'idle-command': kPa(idle.line / 1e3, 'commanded at idle'),
          'load-command': kPa(load.line / 1e3, 'commanded under load'),
          'at-idle': kPa(line('idle'), 'line at idle'),
          'at-load': kPa(line('load'), 'line under load', {
            'as-at-idle': by('leave the reading where it was at idle', line('idle')),
            'same-share': by(
              'keep its share of the command',
              (line('idle') * load.line) / idle.line,
            ),
            'all-of-it': by('let the revs make up for all of the wear', load.line / 1e3),
          }),
        },
      };
    },
  ),
  'reverse-boost': family(
    { drive: steps(450, 800, 25), boost: [1.2, 1.3, 1.4, 1.5, 1.6] },
    ({ drive, boost }) => ({
      numbers: {
        drive: kPa(drive, 'commanded in Drive'),
        boost: times(boost, 'boost of Reverse'),
        reverse: kPa(drive * boost, 'commanded in Reverse', {
          'not-boosted': by('judge Reverse by what Drive is commanded', drive),
          doubled: by('double it', 2 * drive),
        }),
      },
    }),
  ),
  'where-it-crosses': family({ box: BOXES, crack: steps(0.16, 0.4, 0.02) }, ({ box, crack }) => {
    const name = SEALED[box];
    const car = carOf(box, { crackMm: crack });
    const found = letsGo(car, 'gentle', { circuit: name });
    if (found.kind !== 'at' || found.tempC < 45 || found.tempC > 115) return undefined;
    const good = 20 * Math.floor(found.tempC / 20);
    const at = (tempC: number) => tapIn(box, { crackMm: crack, tempC, circuit: name });
    return {
      numbers: {
        crack: mm(crack, 'crack'),
        need: kPa(needOf('gentle', plantOf(box), name).kPa, 'needed'),
        'low-t': degC(good - 20),
        'good-t': degC(good),
        'bad-t': degC(good + 20),
        'low-p': kPa(at(good - 20), 'has'),
        'good-p': kPa(at(good), 'has'),
        'bad-p': kPa(at(good + 20), 'has'),
        crossing: degC(found.tempC, 'up to where it holds', {
          'last-good': by('stop at the last reading that was enough', good),
          'first-bad': by('wait for the first reading that was too low', good + 20),
          'healthy-line': by(
            'look for where the pressure has started to fall instead of where it is too low',
            good - 20,
          ),
        }),
      },
      cases: { circuit: name },
    };
  }),
  'thinner-crossing': family(
    {
      box: BOXES,
      crack: steps(0.16, 0.3, 0.02),
      from: ['standard', 'low-viscosity'],
      to: ['low-viscosity', 'ultra-low'],
    },
    ({ box, crack, from, to }) => {
      if (from === to) return undefined;
      const circuitName = SEALED[box];
      const [before, after] = [from, to].map((fluid) =>
        letsGo(carOf(box, { crackMm: crack, fluid }), 'gentle', { circuit: circuitName }),
      );
      if (before?.kind !== 'at' || after?.kind !== 'at') return undefined;
      const tens = 10 * Math.floor(before.tempC / 10);
      if (before.tempC > 125 || after.tempC < 30) return undefined;
      return {
        numbers: {
          crack: mm(crack, 'crack'),
          holds: degC(tens),
          lost: degC(tens + 10),
          crossing: degC(after.tempC, 'with the thinner fluid', {
            unchanged: by('think that only the crack counts', before.tempC),
            'wrong-way': by('move the crossing the wrong way', 2 * before.tempC - after.tempC),
          }),
        },
        cases: { circuit: circuitName },
      };
    },
  ),
  'spared-by-the-seal': family(
    { box: BOXES, crack: steps(0.2, 0.4, 0.05), hot: [80, 90, 100] },
    ({ box, crack, hot }) => {
      const [hurt, spared] = [HURT[box], SPARED[box]];
      const low = tapIn(box, { crackMm: crack, tempC: hot, circuit: hurt });
      const sound = tapIn(box, { tempC: hot, circuit: hurt });
      const has = tapIn(box, { crackMm: crack, tempC: hot, circuit: spared });
      return {
        numbers: {
          crack: mm(crack, 'crack'),
          hot: degC(hot),
          low: kPa(low, 'clutch behind the seal'),
          sound: kPa(sound, 'the same, healthy'),
          has: kPa(has, 'clutch that is spared', {
            'same-reading': by('let the seal hurt every clutch', low),
            halfway: by('give the other clutch half of the loss', (low + sound) / 2),
          }),
        },
        cases: { hurt, spared },
      };
    },
  ),
  'short-of-need': family(
    { box: BOXES, crack: steps(0.2, 0.4, 0.02), hot: [80, 90, 100, 110] },
    ({ box, crack, hot }) => {
      const plant = plantOf(box);
      const name = SEALED[box];
      const { clutchLeast, lineLeast } = plant.commands;
      const at = (tempC: number) =>
        tapIn(box, {
          crackMm: crack,
          tempC,
          circuit: name,
          lineKpa: lineLeast / 1e3,
          clutchKpa: clutchLeast / 1e3,
        });
      const need = needOf('standing', plant, name).kPa;
      const commanded = clutchLeast / 1e3;
      // Read off in whole psi, need and pressure leave 7 kPa open: a shortage has to be well beyond that.
      if (need - at(hot) < 20 || at(20) < need) return undefined;
      return {
        numbers: {
          crack: mm(crack, 'crack'),
          hot: degC(hot),
          need: kPa(need, 'needed at idle, standing'),
          command: kPa(commanded, 'commanded'),
          cold: kPa(at(20), 'has, 20 °C'),
          has: kPa(at(hot), 'has, hot'),
          short: kPa(need - at(hot), 'short', {
            'from-command': by('take it from the command', commanded - at(hot)),
            'over-need': by('take the need from the command', commanded - need),
          }),
        },
        cases: { circuit: name },
      };
    },
  ),
  'holds-cold-slips-hot': family(
    {
      slips: ['a', 'b', 'c'],
      box: ['second'],
      crack: [0.3, 0.34, 0.38, 0.4],
      port: [0.3, 0.35, 0.4, 0.45, 0.5],
      sound: ['first', 'last'],
    },
    ({ slips, box, crack, port, sound }) => {
      const name = SEALED[box];
      const read = (given: { faults?: FaultSet; crackMm?: number }) =>
        [20, 100].map((tempC) => tapIn(box, { ...given, tempC, circuit: name }));
      const need = needOf('gentle', plantOf(box), name).kPa;
      const cracked = read({ crackMm: crack });
      const holed = read({ faults: { openPort: { severity: port, circuit: name } } });
      const others = sound === 'first' ? [read({}), holed] : [holed, read({})];
      const places = (['a', 'b', 'c'] as const).filter((place) => place !== slips);
      const cars = { [slips]: cracked, [places[0] ?? '']: others[0], [places[1] ?? '']: others[1] };
      const clear = [cracked, ...others].flat().every((has) => !near(has, need, 0.05));
      const slipsHot = ([cold = 0, hot = 0]: readonly number[] = []) => cold > need && hot < need;
      const truth = Object.fromEntries(
        Object.entries(cars).map(([place, readings]) => [place, slipsHot(readings)]),
      );
      if (!clear || truth[slips] !== true) return undefined;
      return {
        numbers: {
          need: kPa(need, 'needed'),
          ...Object.fromEntries(
            Object.entries(cars).flatMap(([place, [cold = 0, hot = 0] = []]) => [
              [`${place}-cold`, kPa(cold, 'tap, 20 °C')],
              [`${place}-hot`, kPa(hot, 'tap, 100 °C')],
            ]),
          ),
        },
        truth,
      };
    },
  ),
  'line-cold-hot-fast': family(
    {
      is: ['pump', 'command', 'sound'],
      box: ['second'],
      wear: [0.25, 0.3, 0.4, 0.5],
      low: [0.25, 0.3, 0.4, 0.5],
    },
    ({ is, box, wear, low }) => {
      const faults: FaultSet = {
        pump: { pumpWear: { severity: wear } },
        command: { pressureControl: { severity: low } },
        sound: {},
      }[is];
      const { idle, load } = plantOf(box).testPoints;
      const line = (tempC: number, point: 'idle' | 'load') =>
        readIn(box, { faults, tempC, point }).lineKpa;
      return {
        numbers: {
          'idle-speed': rpm(idle.engineRpm, 'idle'),
          'load-speed': rpm(load.engineRpm, 'under load'),
          'idle-command': kPa(idle.line / 1e3, 'commanded at idle'),
          'load-command': kPa(load.line / 1e3, 'commanded under load'),
          cold: kPa(line(20, 'idle'), 'line, idle, 20 °C'),
          hot: kPa(line(100, 'idle'), 'line, idle, 100 °C'),
          fast: kPa(line(100, 'load'), 'line, load, 100 °C'),
        },
        truth: { pump: is === 'pump', command: is === 'command', sound: is === 'sound' },
      };
    },
  ),
  'which-ranges-suffer': family(
    {
      is: ['seal', 'rings', 'pump', 'sound'],
      box: ['second'],
      crack: [0.3, 0.35, 0.4],
      wear: [0.45, 0.5, 0.6],
      pumpWear: [0.3, 0.4, 0.5],
    },
    ({ is, box, crack, wear, pumpWear }) => {
      const faults: FaultSet =
        is === 'rings'
          ? { sealingRings: { severity: wear, circuit: 'forward' } }
          : is === 'pump'
            ? { pumpWear: { severity: pumpWear } }
            : {};
      const crackMm = is === 'seal' ? crack : 0;
      const tap = (name: Circuit, given = { faults, crackMm }) =>
        tapIn(box, { ...given, tempC: 100, circuit: name });
      const each = (['forward', 'reverse', 'high'] as const).map((name) => ({
        name,
        has: tap(name),
        sound: tap(name, { faults: {}, crackMm: 0 }),
      }));
      return {
        numbers: Object.fromEntries(
          each.flatMap(({ name, has, sound }) => [
            [name, kPa(has, `${name} tap, hot`)],
            [`${name}-sound`, kPa(sound, `${name} tap, hot, healthy`)],
          ]),
        ),
        truth: {
          seal: is === 'seal',
          rings: is === 'rings',
          pump: is === 'pump',
          sound: is === 'sound',
        },
      };
    },
  ),
};
