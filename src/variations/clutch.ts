/** Force, spring, friction and torque: what a clutch holds and what it is asked to hold. */
import { kPaFor, stalledTorque } from '../car/index.ts';
import { CIRCUITS, clutchPressureFor, clutchTorque } from '../engine/index.ts';
import { count, entry, kPa, newtonMetres, newtons, rpm, seconds, times } from '../numbers/entry.ts';
import { BOXES, plantOf, type Box } from './boxes.ts';
import { by, family, steps } from './family.ts';

type CircuitName = (typeof CIRCUITS)[number];
const clutchIn = (box: Box, circuit: CircuitName) => plantOf(box).clutches[circuit];
const area = (value: number, what: string) => entry('area', value, what);
/** What its sheet says of a clutch. */
const sheetOf = (box: Box, circuit: CircuitName) => {
  const clutch = clutchIn(box, circuit);
  return {
    area: area(clutch.area * 1e4, 'piston'),
    spring: newtons(clutch.springForce, 'return spring'),
    faces: count(clutch.faces, 'friction faces'),
    radius: entry('dimension', clutch.meanRadius * 1e3, 'mean radius'),
    friction: entry('friction', clutch.friction, 'friction'),
  };
};
const PRESSURES = steps(240, 600, 20);

export const clutch = {
  'force-on-piston': family(
    { box: BOXES, circuit: CIRCUITS, pressure: PRESSURES },
    ({ box, circuit, pressure }) => {
      const { area: m2, springForce, faces } = clutchIn(box, circuit);
      const push = pressure * 1e3 * m2;
      return {
        numbers: {
          ...sheetOf(box, circuit),
          pressure: kPa(pressure, 'pressure'),
          force: newtons(push, 'push of the fluid', {
            'spring-added': by('add the spring to what the fluid does', push + springForce),
            'spring-taken': by(
              'take the spring off already, which was not asked',
              push - springForce,
            ),
            'each-face': by('count the area once for each of the faces', push * faces),
          }),
        },
      };
    },
  ),
  'press-force': family(
    { hand: steps(150, 400, 50), small: [2, 2.5, 4, 5], large: steps(30, 80, 10) },
    ({ hand, small, large }) => ({
      numbers: {
        hand: newtons(hand, 'on the small piston'),
        small: area(small, 'small piston'),
        large: area(large, 'ram'),
        times: times(large / small, 'larger'),
        force: newtons((hand * large) / small, 'of the ram', {
          'same-force': by('pass the force on instead of the pressure', hand),
          'upside-down': by('turn the areas upside down', (hand * small) / large),
        }),
      },
    }),
  ),
  'torque-held': family(
    { box: BOXES, circuit: CIRCUITS, pressure: PRESSURES },
    ({ box, circuit, pressure }) => {
      const here = clutchIn(box, circuit);
      const push = pressure * 1e3 * here.area;
      const holds = clutchTorque(here, pressure * 1e3);
      return {
        numbers: {
          ...sheetOf(box, circuit),
          pressure: kPa(pressure, 'pressure'),
          push: newtons(push, 'push of the fluid'),
          holds: newtonMetres(holds, 'torque held', {
            'forgot-spring': by(
              'forget the spring',
              here.friction * here.faces * here.meanRadius * push,
            ),
            'one-face': by('count one face only', holds / here.faces),
            diameter: by('use the diameter for the radius', 2 * holds),
          }),
        },
      };
    },
  ),
  'pressure-needed': family(
    { box: BOXES, circuit: CIRCUITS, torque: steps(60, 240, 10) },
    ({ box, circuit, torque }) => {
      const here = clutchIn(box, circuit);
      const arm = here.friction * here.faces * here.meanRadius;
      const squeeze = torque / arm;
      return {
        numbers: {
          ...sheetOf(box, circuit),
          torque: newtonMetres(torque, 'to be held'),
          lever: newtonMetres(100 * arm, 'held for 100 N'),
          needed: kPa(clutchPressureFor(here, torque) / 1e3, 'pressure needed', {
            'forgot-spring': by('forget the spring', squeeze / here.area / 1e3),
            'spring-helps': by(
              'let the spring help instead of paying for it',
              (squeeze - here.springForce) / here.area / 1e3,
            ),
          }),
        },
      };
    },
  ),
  'spring-alone': family(
    { box: BOXES, circuit: CIRCUITS, weak: [1, 1.1, 1.2, 0.9] },
    ({ box, circuit, weak }) => {
      const here = clutchIn(box, circuit);
      const spring = weak * here.springForce;
      const begins = spring / here.area / 1e3;
      return {
        numbers: {
          ...sheetOf(box, circuit),
          spring: newtons(spring, 'return spring'),
          begins: kPa(begins, 'where the plates begin to feel it', {
            doubled: by('count the spring on both sides of the piston', 2 * begins),
            'per-face': by('share the spring out among the faces', begins / here.faces),
          }),
        },
      };
    },
  ),
  'friction-lost': family(
    { box: BOXES, circuit: CIRCUITS, pressure: PRESSURES, left: [50, 60, 70] },
    ({ box, circuit, pressure, left }) => {
      const here = clutchIn(box, circuit);
      const holds = clutchTorque(here, pressure * 1e3);
      return {
        numbers: {
          pressure: kPa(pressure, 'pressure'),
          left: entry('percent', left, 'friction left'),
          sound: newtonMetres(holds, 'torque held by a sound clutch'),
          worn: newtonMetres((holds * left) / 100, 'torque held by the worn one', {
            unchanged: by('judge by the gauge alone', holds),
            'less-pressure': by(
              'take it off the pressure instead of the friction',
              clutchTorque(here, pressure * 10 * left),
            ),
          }),
        },
      };
    },
  ),
  'torque-standing': family(
    { box: BOXES, known: [1000, 1200, 1500, 2000], at: steps(600, 1000, 50) },
    ({ box, known, at }) => {
      const { drive } = plantOf(box);
      const stalled = (speed: number): number => stalledTorque(speed, plantOf(box));
      return {
        numbers: {
          known: rpm(known, 'speed that the torque is given at'),
          taken: newtonMetres(
            stalled(known) / drive.stallTorqueRatio,
            'what the converter takes there',
          ),
          at: rpm(at, 'idle'),
          'at-taken': newtonMetres(stalled(at) / drive.stallTorqueRatio, 'taken at idle'),
          multiplies: times(drive.stallTorqueRatio, 'torque ratio, turbine standing'),
          torque: newtonMetres(stalled(at), 'on the clutch at idle', {
            'no-ratio': by(
              'leave out that the converter multiplies the torque',
              stalled(at) / drive.stallTorqueRatio,
            ),
            'no-square': by(
              'take the torque down by the ratio of the speeds, without squaring it',
              (stalled(known) * at) / known,
            ),
          }),
        },
      };
    },
  ),
  'torque-at-more-speed': family(
    { box: BOXES, from: [650, 700, 750, 800], more: [1.5, 2, 2.5, 3] },
    ({ box, from, more }) => {
      const torque = stalledTorque(from, plantOf(box));
      return {
        numbers: {
          from: rpm(from, 'idle'),
          to: rpm(from * more, 'raised'),
          more: times(more, 'times the speed'),
          squared: times(more * more, 'times the torque'),
          'at-idle': newtonMetres(torque, 'on the clutch at idle'),
          torque: newtonMetres(stalledTorque(from * more, plantOf(box)), 'on the clutch, raised', {
            followed: by('let torque follow speed instead of its square', more * torque),
            unchanged: by('take the torque of idle for every speed', torque),
          }),
        },
      };
    },
  ),
  'least-stop': family(
    { spin: steps(1.6, 4, 0.2), holds: steps(50, 120, 5), push: steps(20, 45, 5) },
    ({ spin, holds, push }) =>
      holds > push + 10
        ? {
            numbers: {
              spin: entry('spin', spin, 'spin of the turbine'),
              holds: newtonMetres(holds, 'what the clutch holds'),
              push: newtonMetres(push, 'push of the converter'),
              time: seconds(spin / (holds - push), 'least time to stop', {
                'held-not-left': by(
                  'divide by all that the clutch holds, as if nothing pushed',
                  spin / holds,
                ),
                'push-alone': by('divide by the push of the converter', spin / push),
              }),
            },
          }
        : undefined,
  ),
  'seen-at-rest': family({ box: BOXES, turbine: steps(240, 700, 20) }, ({ box, turbine }) => {
    const first = plantOf(box).drive.ratios.forward;
    return {
      numbers: {
        ratio: entry('ratio', first, 'first'),
        turbine: rpm(turbine, 'turbine'),
        slip: rpm(turbine, 'turns too much', {
          'times-ratio': by('multiply it by the ratio', turbine * first),
          'by-ratio': by('divide it by the ratio', turbine / first),
        }),
      },
    };
  }),
  'which-command-holds': family(
    { enough: ['low', 'middle', 'high'], box: ['second'], engine: steps(1100, 1900, 100) },
    ({ enough, box, engine }) => {
      const torque = stalledTorque(engine, plantOf(box));
      const needed = kPaFor(torque, plantOf(box));
      // The least of three that is enough: one, two or none of the others lie under it.
      const places = { low: [1.15, 1.45, 1.8], middle: [0.8, 1.15, 1.5], high: [0.6, 0.82, 1.15] };
      const [low = 0, middle = 0, high = 0] = places[enough].map(
        (share) => Math.round((share * needed) / 10) * 10,
      );
      return {
        numbers: {
          ...sheetOf(box, 'forward'),
          engine: rpm(engine, 'engine speed'),
          torque: newtonMetres(torque, 'on the clutch'),
          needed: kPa(needed, 'needed'),
          low: kPa(low, 'a command'),
          middle: kPa(middle, 'a command'),
          high: kPa(high, 'a command'),
        },
        truth: { low: enough === 'low', middle: enough === 'middle', high: enough === 'high' },
      };
    },
  ),
  'which-stops-first': family(
    {
      first: ['loader', 'truck', 'bus'],
      loader: [3, 4, 5, 6],
      truck: [2, 3, 4],
      bus: [3, 4, 5],
      left: [10, 15, 20, 30, 40],
      more: [1.2, 1.6, 2, 2.5],
    },
    ({ first, loader, truck, bus, left, more }) => {
      const spins = { loader, truck, bus };
      const lefts = { loader: left, truck: left / more, bus: left * more };
      const times = Object.entries(spins).map(
        ([name, spin]) => [name, spin / Math.round(lefts[name as 'bus'])] as const,
      );
      const [best, next] = [...times].sort((a, b) => a[1] - b[1]);
      if (best === undefined || next === undefined || best[0] !== first) return undefined;
      if (next[1] < 1.25 * best[1]) return undefined;
      return {
        numbers: Object.fromEntries(
          times.flatMap(([name, time]) => [
            [`${name}-spin`, entry('spin', spins[name as 'bus'], 'spin')],
            [`${name}-left`, newtonMetres(Math.round(lefts[name as 'bus']), 'left over')],
            [`${name}-time`, seconds(time, 'least time')],
          ]),
        ),
        truth: Object.fromEntries(times.map(([name]) => [name, name === first])),
      };
    },
  ),
};
