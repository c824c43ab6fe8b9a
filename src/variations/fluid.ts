/** How thin a fluid gets, and what that does to gaps, holes and what lies between. */
import {
  fluidAt,
  fluidClasses,
  gapFlow,
  holeArea,
  holeFlow,
  litresPerMinute,
  makeFluid,
  pumpSlipPerPascal,
  type FluidSpec,
  type FluidState,
} from '../engine/index.ts';
import { count, cSt, entry, kPa, lmin, mm, mPas, percent, times } from '../numbers/entry.ts';
import { BOXES, carOf, fluidIn, plantOf } from './boxes.ts';
import { by, family, steps } from './family.ts';

const CLASSES = ['low-viscosity', 'ultra-low', 'standard'] as const;
/** Invented press oils, named by their grade: the second number and the density are plausible, not published. */
const OILS = {
  '32': { kv40CSt: 32, kv100CSt: 5.4, density15: 865 },
  '46': { kv40CSt: 46, kv100CSt: 6.8, density15: 870 },
  '68': { kv40CSt: 68, kv100CSt: 8.7, density15: 876 },
  '100': { kv40CSt: 100, kv100CSt: 11.2, density15: 880 },
} as const;
type Oil = keyof typeof OILS;
const OIL_NAMES = Object.keys(OILS) as readonly Oil[];
const stateOf = (spec: FluidSpec, tempC: number): FluidState => fluidAt(makeFluid(spec), tempC);
const degC = (value: number) => entry('temperature', value, 'a chosen temperature');
const cst = ({ kinematic }: FluidState): number => kinematic * 1e6;
const mpas = ({ dynamic }: FluidState): number => dynamic * 1e3;
const rootRule = 'take the root of how many times thinner it got';
const hole = (millimetres: number, kilopascal: number, { density, kinematic }: FluidState) =>
  litresPerMinute(holeFlow(holeArea(millimetres / 1e3), kilopascal * 1e3, density, kinematic));

export const fluid = {
  'dynamic-from-kinematic': family(
    { fluid: CLASSES, hot: steps(60, 120, 5) },
    ({ fluid: name, hot }) => {
      const state = stateOf(fluidClasses[name], hot);
      const [nu, rho] = [cst(state), state.density / 1e3];
      return {
        numbers: {
          hot: degC(hot),
          kinematic: cSt(nu, 'kinematic'),
          density: entry('density', state.density, 'density'),
          dynamic: mPas(nu * rho, 'dynamic', {
            'forgot-density': by('forget the density and read cSt as mPa·s', nu),
            divided: by('divide by the density', nu / rho),
          }),
        },
      };
    },
  ),
  'between-two-numbers': family(
    { fluid: CLASSES, at: [55, 60, 65, 70, 75] },
    ({ fluid: name, at }) => {
      const spec = fluidClasses[name];
      const slope = (spec.kv100CSt - spec.kv40CSt) / 60;
      return {
        numbers: {
          at: degC(at),
          cold: cSt(spec.kv40CSt, 'published, 40 °C'),
          hot: cSt(spec.kv100CSt, 'published, 100 °C'),
          between: cSt(cst(stateOf(spec, at)), 'between', {
            'straight-line': by(
              'draw a straight line between the two numbers',
              spec.kv40CSt + slope * (at - 40),
            ),
            'hot-number': by('take the hot number', spec.kv100CSt),
          }),
        },
      };
    },
  ),
  'press-oil-warm': family({ oil: OIL_NAMES, at: [55, 60, 65, 70, 80] }, ({ oil, at }) => {
    const spec = OILS[oil];
    return {
      numbers: {
        at: degC(at),
        above: entry('temperatureRise', at - 40, 'above the first number'),
        cold: cSt(spec.kv40CSt, 'published, 40 °C'),
        hot: cSt(spec.kv100CSt, 'published, 100 °C'),
        warm: cSt(cst(stateOf(spec, at)), 'in the tank', {
          'straight-line': by(
            'draw a straight line between the two published numbers',
            spec.kv40CSt + ((spec.kv100CSt - spec.kv40CSt) * (at - 40)) / 60,
          ),
          'grade-number': by('take the grade number for every temperature', spec.kv40CSt),
        }),
      },
    };
  }),
  'times-thinner': family(
    { fluid: CLASSES, cold: steps(20, 48, 1), thins: steps(3.6, 5.6, 0.1) },
    ({ fluid: name, cold, thins }) => {
      const spec = fluidClasses[name];
      const hot = Math.round((10 * cold) / thins) / 10;
      return {
        numbers: {
          'other-cold': cSt(spec.kv40CSt, 'fluid A, 40 °C'),
          'other-hot': cSt(spec.kv100CSt, 'fluid A, 100 °C'),
          cold: cSt(cold, 'fluid B, 40 °C'),
          hot: cSt(hot, 'fluid B, 100 °C'),
          thinner: times(cold / hot, 'fluid B gets thinner', {
            'other-fluid': by(
              'divide the numbers of the other fluid',
              spec.kv40CSt / spec.kv100CSt,
            ),
            subtracted: by('take one number from the other', cold - hot),
            'upside-down': by('divide the hot number by the cold one', hot / cold),
          }),
        },
      };
    },
  ),
  'pump-slip': family(
    { box: BOXES, wear: [0.08, 0.1, 0.12, 0.15], warm: [40, 50, 60, 70], hot: [90, 100, 110] },
    ({ box, wear, warm, hot }) => {
      const plant = plantOf(box);
      const { pump } = carOf(box, { faults: { pumpWear: { severity: wear } } }).plant;
      const { line } = plant.testPoints.idle;
      const [thick, thin] = [fluidIn(box, warm), fluidIn(box, hot)];
      const slip = ({ dynamic }: FluidState): number =>
        litresPerMinute(pumpSlipPerPascal(pump, dynamic) * line);
      const thinner = thick.dynamic / thin.dynamic;
      return {
        numbers: {
          line: kPa(line / 1e3, 'line'),
          warm: degC(warm),
          hot: degC(hot),
          'warm-slip': lmin(slip(thick), 'slips back warm'),
          'warm-mu': mPas(mpas(thick), 'warm'),
          'hot-mu': mPas(mpas(thin), 'hot'),
          thinner: times(thinner, 'thinner'),
          slip: lmin(slip(thin), 'slips back hot', {
            root: by(rootRule, slip(thick) * Math.sqrt(thinner)),
            'upside-down': by('turn the ratio of viscosities upside down', slip(thick) / thinner),
            unchanged: by('take the pump to deliver the same at any temperature', slip(thick)),
          }),
        },
      };
    },
  ),
  'rings-hot': family(
    { box: BOXES, pressure: [300, 350, 400, 450], cold: [10, 20, 30], hot: [80, 90, 100] },
    ({ box, pressure, cold, hot }) => {
      const { rings } = plantOf(box).leaks.forward;
      const leak = (state: FluidState): number =>
        litresPerMinute(gapFlow(rings, pressure * 1e3, state).flow);
      const [thick, thin] = [fluidIn(box, cold), fluidIn(box, hot)];
      const thinner = thick.dynamic / thin.dynamic;
      return {
        numbers: {
          pressure: kPa(pressure, 'behind the rings'),
          cold: degC(cold),
          hot: degC(hot),
          'cold-leak': lmin(leak(thick), 'rings, cold'),
          'cold-mu': mPas(mpas(thick), 'cold'),
          'hot-mu': mPas(mpas(thin), 'hot'),
          thinner: times(thinner, 'thinner'),
          leak: lmin(leak(thin), 'rings, hot', {
            'hole-rule': by(
              'take the gap for a hole',
              leak(thick) * Math.sqrt(thick.density / thin.density),
            ),
            root: by(rootRule, leak(thick) * Math.sqrt(thinner)),
            'upside-down': by('turn the ratio of viscosities upside down', leak(thick) / thinner),
          }),
        },
      };
    },
  ),
  'plug-left-out': family(
    {
      box: BOXES,
      hole: [1.2, 1.5, 1.8, 2, 2.4],
      pressure: [300, 350, 400, 450],
      cold: [10, 20, 30],
      hot: [80, 90, 100],
    },
    ({ box, hole: size, pressure, cold, hot }) => {
      const [thick, thin] = [fluidIn(box, cold), fluidIn(box, hot)];
      const thinner = thick.dynamic / thin.dynamic;
      const before = hole(size, pressure, thick);
      return {
        numbers: {
          hole: mm(size, 'open hole'),
          pressure: kPa(pressure, 'behind it'),
          cold: degC(cold),
          hot: degC(hot),
          thinner: times(thinner, 'thinner'),
          'cold-leak': lmin(before, 'hole, cold'),
          leak: lmin(hole(size, pressure, thin), 'hole, hot', {
            'gap-rule': by('take the hole for a gap', before * thinner),
            root: by(rootRule, before * Math.sqrt(thinner)),
          }),
        },
      };
    },
  ),
  'scored-seat': family(
    {
      oil: OIL_NAMES,
      hole: [1.5, 2, 2.5, 3],
      pressure: [6000, 8000, 10000, 12000],
      cold: [10, 15, 20],
      hot: [50, 60, 70],
    },
    ({ oil, hole: size, pressure, cold, hot }) => {
      const [thick, thin] = [stateOf(OILS[oil], cold), stateOf(OILS[oil], hot)];
      const thinner = thick.dynamic / thin.dynamic;
      const before = hole(size, pressure, thick);
      return {
        numbers: {
          hole: mm(size, 'scored seat as a hole'),
          cold: degC(cold),
          hot: degC(hot),
          thinner: times(thinner, 'thinner'),
          'cold-leak': lmin(before, 'seat, cold'),
          leak: lmin(hole(size, pressure, thin), 'seat, warm', {
            'gap-rule': by('take the open seat for a thin gap', before * thinner),
            root: by(rootRule, before * Math.sqrt(thinner)),
          }),
        },
      };
    },
  ),
  'not-viscous': family(
    {
      box: BOXES,
      crack: [0.12, 0.14, 0.16, 0.18, 0.2],
      pressure: [300, 350, 400, 450],
      hot: [90, 100, 110],
    },
    ({ box, crack, pressure, hot }) => {
      const plant = plantOf(box);
      const seal = plant.leaks[box === 'first' ? 'forward' : 'reverse'].transferSeal;
      const share = (tempC: number): number =>
        gapFlow({ ...seal, height: crack / 1e3 }, pressure * 1e3, fluidIn(box, tempC)).viscousShare;
      return {
        numbers: {
          crack: mm(crack, 'crack'),
          pressure: kPa(pressure, 'behind it'),
          hot: degC(hot),
          'hot-share': percent(100 * share(hot), 'viscous share, hot'),
          'cold-share': percent(100 * share(20), 'viscous share, 20 °C'),
          rest: kPa(pressure * (1 - share(hot)), 'not spent on rubbing', {
            'viscous-part': by('take the viscous part itself', pressure * share(hot)),
            'cold-share': by('use the share of the cold fluid', pressure * (1 - share(20))),
            all: by('count all of the pressure', pressure),
          }),
        },
      };
    },
  ),
  'wide-crack': family(
    {
      box: BOXES,
      crack: [0.34, 0.36, 0.38, 0.4],
      pressure: [300, 350, 400, 450],
      hot: [90, 100, 110],
    },
    ({ box, crack, pressure, hot }) => {
      const seal = plantOf(box).leaks[box === 'first' ? 'forward' : 'reverse'].transferSeal;
      const [thick, thin] = [fluidIn(box, 20), fluidIn(box, hot)];
      const leak = (state: FluidState): number =>
        litresPerMinute(gapFlow({ ...seal, height: crack / 1e3 }, pressure * 1e3, state).flow);
      const thinner = thick.dynamic / thin.dynamic;
      return {
        numbers: {
          crack: mm(crack, 'crack'),
          pressure: kPa(pressure, 'behind it'),
          hot: degC(hot),
          thinner: times(thinner, 'thinner'),
          growth: times(leak(thin) / leak(thick), 'grows'),
          'cold-leak': lmin(leak(thick), 'crack, 20 °C'),
          leak: lmin(leak(thin), 'crack, hot', {
            'gap-rule': by('take the crack for a thin gap', leak(thick) * thinner),
            unchanged: by('take the crack for a hole', leak(thick)),
          }),
        },
      };
    },
  ),
  'gap-or-hole': family(
    {
      is: ['gap', 'hole', 'sound'],
      oil: OIL_NAMES,
      cold: [10, 15, 20],
      hot: [50, 55, 60, 70],
      sinks: steps(4, 20, 1),
    },
    ({ is, oil, cold, hot, sinks }) => {
      const [thick, thin] = [stateOf(OILS[oil], cold), stateOf(OILS[oil], hot)];
      const thinner = thick.dynamic / thin.dynamic;
      const grows = { gap: thinner, hole: Math.sqrt(thick.density / thin.density), sound: 0 }[is];
      return {
        numbers: {
          cold: degC(cold),
          hot: degC(hot),
          thinner: times(thinner, 'thinner'),
          'sinks-cold': entry(
            'dimension',
            is === 'sound' ? 0 : sinks,
            'sinks in ten minutes, cold',
          ),
          'sinks-hot': entry(
            'dimension',
            is === 'sound' ? 0 : sinks * grows,
            'sinks in ten minutes, warm',
          ),
        },
        truth: { gap: is === 'gap', hole: is === 'hole', sound: is === 'sound' },
      };
    },
  ),
  'least-thinned': family(
    {
      best: ['a', 'b', 'c'],
      a: steps(22, 46, 2),
      b: steps(22, 46, 2),
      c: steps(22, 46, 2),
      thins: [3.6, 3.8, 4, 4.2],
    },
    ({ best, a, b, c, thins }) => {
      const cold = { a, b, c };
      // Each of the others thins clearly more.
      const rates = { a: thins + 1.4, b: thins + 0.7, c: thins + 1, [best]: thins };
      const each = (['a', 'b', 'c'] as const).map((name) => {
        const hot = Math.round((10 * cold[name]) / rates[name]) / 10;
        return { name, cold: cold[name], hot, thinner: cold[name] / hot };
      });
      const least = Math.min(...each.map(({ thinner }) => thinner));
      if (new Set([a, b, c]).size < 3) return undefined;
      return {
        numbers: Object.fromEntries(
          each.flatMap(({ name, cold: k40, hot, thinner }) => [
            [`${name}-cold`, cSt(k40, '40 °C')],
            [`${name}-hot`, cSt(hot, '100 °C')],
            [`${name}-thinner`, times(thinner, 'thinner')],
          ]),
        ),
        truth: Object.fromEntries(each.map(({ name, thinner }) => [name, thinner === least])),
      };
    },
  ),
  'doubled-opening': family({ leak: steps(0.2, 1.2, 0.1), wider: [2, 3] }, ({ leak, wider }) => ({
    numbers: {
      before: lmin(leak, 'before'),
      wider: count(wider, 'times as high'),
      cubed: count(wider ** 3, 'times the leak'),
      leak: lmin(leak * wider ** 3, 'after', {
        followed: by('let the leak follow the opening', leak * wider),
        squared: by('square it, as for the area of a hole', leak * wider ** 2),
      }),
    },
  })),
};
