/** Air on the bench, filters, seals and fill: what is found with the car in pieces, and while it goes together. */
import { airReading } from '../car/air-bench.ts';
import { FIFTH } from '../car/filters.ts';
import {
  airHeldBehind,
  airHoleFlow,
  BENCH_AIR,
  CIRCUITS,
  densityRatio,
  holeArea,
  makeFluid,
  RUBBER_EXPANSION,
  STEEL_EXPANSION,
  TESTER_HOLE,
  type FaultSet,
} from '../engine/index.ts';
import { count, entry, kPa, mm, percent, rpm } from '../numbers/entry.ts';
import { BOXES, carOf, fluidIn, plantOf, tapIn } from './boxes.ts';
import { by, family, steps } from './family.ts';

const RIG = { supply: 275, hole: 1.5, wet: true };
const degC = (value: number) => entry('temperature', value, 'a chosen temperature');
const dimension = (value: number, what: string) => entry('dimension', value, what);
const watch = (value: number, what: string, wrong = {}) => entry('watchTime', value, what, wrong);
const litres = (value: number, what: string, wrong = {}) =>
  entry('fluidVolume', value, what, wrong);

export const bench = {
  'percent-on-a-rig': family(
    { supply: steps(200, 350, 10), held: steps(12, 44, 4) },
    ({ supply, held }) => {
      const reads = Math.round((supply * held) / 500) * 5;
      const share = (100 * reads) / supply;
      return {
        numbers: {
          supply: kPa(supply, 'supply'),
          reads: kPa(reads, 'behind the hole'),
          held: percent(share, 'held', {
            lost: by('take what is lost for what is held', 100 - share),
            reading: by('take the pressure for the percent', reads),
          }),
        },
      };
    },
  ),
  'plate-on-the-rig': family({ leak: [1.7, 1.8, 1.9, 2, 2.2, 2.4, 2.6, 3] }, ({ leak }) => {
    const held = airHeldBehind(TESTER_HOLE, BENCH_AIR, (air) =>
      airHoleFlow(holeArea(leak / 1e3), air),
    );
    return {
      numbers: {
        leak: mm(leak, 'hole in the plate'),
        held: percent(100 * held, 'held', {
          areas: by('take the share of the two areas', 100 * (RIG.hole / leak) ** 2),
          diameters: by('take the share of the two diameters', (100 * RIG.hole) / leak),
          nothing: by('let a hole that is wider than the tester’s hold nothing', 0),
        }),
      },
    };
  }),
  'bored-out': family(
    { box: BOXES, severity: steps(0.12, 0.22, 0.02), hole: [2.6, 2.8, 3, 3.2] },
    ({ box, severity, hole }) => {
      const worn = carOf(box, { faults: { sealingRings: { severity, circuit: 'forward' } } });
      const held = (car: typeof worn, rig: number): number =>
        airReading(car, 'forward', { ...RIG, hole: rig }).held;
      return {
        numbers: {
          hole: mm(hole, 'bored out'),
          more: entry('times', (hole / RIG.hole) ** 2, 'times the air'),
          narrow: percent(held(worn, RIG.hole), 'worn rings behind the right hole'),
          held: percent(held(worn, hole), 'worn rings behind the wide hole', {
            'as-narrow': by('keep the number of the narrow hole', held(worn, RIG.hole)),
            sound: by('let the wide hole make it look like a good one', held(carOf(box), hole)),
          }),
        },
      };
    },
  ),
  'beside-its-sisters': family(
    {
      leaks: ['forward', 'none', 'reverse', 'high'],
      box: ['second'],
      severity: steps(0.3, 0.9, 0.1),
    },
    ({ leaks, box, severity }) => {
      const faults: FaultSet = leaks === 'none' ? {} : { pistonSeal: { severity, circuit: leaks } };
      const held = CIRCUITS.map(
        (name) => [name, airReading(carOf(box, { faults }), name, RIG).held] as const,
      );
      return {
        numbers: Object.fromEntries(held.map(([name, value]) => [name, percent(value, 'held')])),
        truth: {
          ...Object.fromEntries(CIRCUITS.map((name) => [name, name === leaks])),
          none: leaks === 'none',
        },
      };
    },
  ),
  'cold-hot-and-air': family(
    {
      is: ['gap', 'hole', 'valve', 'sound'],
      box: ['second'],
      gap: [0.6, 0.7, 0.8],
      hole: [0.6, 0.65, 0.7],
      valve: [0.6, 0.7, 0.8],
    },
    ({ is, box, gap, hole, valve }) => {
      const faults: FaultSet = {
        gap: { pistonSeal: { severity: gap, circuit: 'forward' as const } },
        hole: { openPort: { severity: hole, circuit: 'forward' as const } },
        valve: { clutchControl: { severity: valve, circuit: 'forward' as const } },
        sound: {},
      }[is];
      const car = carOf(box, { faults });
      return {
        numbers: {
          command: kPa(plantOf(box).testPoints.idle.clutch / 1e3, 'commanded'),
          cold: kPa(tapIn(box, { faults, tempC: 20 }), 'tap, 20 °C'),
          hot: kPa(tapIn(box, { faults, tempC: 100 }), 'tap, 100 °C'),
          held: percent(airReading(car, 'forward', RIG).held, 'air held'),
          sound: percent(airReading(carOf(box), 'forward', RIG).held, 'air held, healthy'),
        },
        truth: {
          gap: is === 'gap',
          hole: is === 'hole',
          valve: is === 'valve',
          sound: is === 'sound',
        },
      };
    },
  ),
  'runs-out-too-hot': family(
    { box: BOXES, middle: [35, 40, 45], hot: [60, 65, 70, 75, 80, 90] },
    ({ box, middle, hot }) => {
      const { fluid, sump } = plantOf(box);
      const swells = (tempC: number): number =>
        sump.fill * 1e3 * (densityRatio(makeFluid(fluid), 20, tempC) - 1);
      return {
        numbers: {
          fill: litres(sump.fill * 1e3, 'fill'),
          middle: degC(middle),
          hot: degC(hot),
          out: litres(swells(hot) - swells(middle), 'runs out', {
            'wrong-leg': by(
              'take the way from a cold night to where the plug is read',
              swells(middle),
            ),
            'all-of-it': by('count all the swelling from a cold night', swells(hot)),
          }),
        },
      };
    },
  ),
  'fill-swells': family(
    { box: BOXES, fill: steps(14, 40, 2), hot: [80, 90, 100] },
    ({ box, fill, hot }) => {
      const { fluid, sump } = plantOf(box);
      // In whole percent, as it is printed: who works with that has to come to the amount that is shown.
      const swells = Math.round(100 * (densityRatio(makeFluid(fluid), 20, hot) - 1)) / 100;
      return {
        numbers: {
          fill: litres(fill, 'fill'),
          hot: degC(hot),
          share: percent(100 * swells, 'swells'),
          'car-fill': litres(sump.fill * 1e3, 'fill of our car'),
          grows: litres(fill * swells, 'grows', {
            'tenth-of-it': by('slip a place in the percentage', (fill * swells) / 10),
            'like-the-car': by('take the amount of the smaller fill', sump.fill * 1e3 * swells),
          }),
        },
      };
    },
  ),
  'less-media': family(
    { box: BOXES, frost: [-10, -5, 0, 5], media: [50, 60, 80, 100], less: [2, 3] },
    ({ box, frost, media, less }) => {
      const { pump } = plantOf(box);
      const { dynamic } = fluidIn(box, frost);
      const from = (share: number): number =>
        (60 * pump.suctionLimit * share) /
        (100 * dynamic * pump.suctionResistance * pump.displacement);
      const before = from(media);
      if (before < 700 || before > 4000) return undefined;
      return {
        numbers: {
          frost: degC(frost),
          media: percent(media, 'of the maker’s media'),
          'less-media': percent(media / less, 'of the maker’s media'),
          less: count(less, 'times less'),
          from: rpm(before, 'up to there with more media'),
          'less-from': rpm(before / less, 'up to there with less', {
            'same-speed': by('leave the speed where it was', before),
            'other-way': by('let less media stand more speed', before * less),
          }),
        },
      };
    },
  ),
  'longest-pour': family({ maker: steps(8, 30, 1) }, ({ maker }) => ({
    numbers: {
      maker: watch(maker, 'pour of the maker’s part'),
      longest: watch(FIFTH * maker, 'longest pour within a fifth', {
        'as-long': by('allow nothing', maker),
        half: by('allow half as much again', 1.5 * maker),
      }),
    },
  })),
  'media-by-pours': family(
    { maker: steps(8, 20, 1), unknown: steps(18, 60, 2) },
    ({ maker, unknown }) =>
      unknown > 1.4 * maker
        ? {
            numbers: {
              maker: watch(maker, 'pour of the maker’s part'),
              unknown: watch(unknown, 'pour of the unknown part'),
              media: percent((100 * maker) / unknown, 'of the maker’s media', {
                upside: by('divide the other way', (100 * unknown) / maker),
                'by-difference': by(
                  'take the difference of the two times',
                  (100 * (unknown - maker)) / unknown,
                ),
              }),
            },
          }
        : undefined,
  ),
  'alike-pours': family(
    {
      alike: ['a', 'b', 'c', 'none'],
      maker: steps(10, 24, 1),
      within: [1.05, 1.1, 1.14],
      over: [1.3, 1.4, 1.5],
      far: [1.7, 2, 2.4],
      quick: [0.6, 0.65, 0.7],
    },
    ({ alike, maker, within, over, far, quick }) => {
      const shares = { a: over, b: far, c: quick };
      const pours = (['a', 'b', 'c'] as const).map(
        (name) => [name, Math.round(maker * (name === alike ? within : shares[name]))] as const,
      );
      const is = (pour: number): boolean => pour <= FIFTH * maker && pour >= maker / FIFTH;
      const found = pours.filter(([, pour]) => is(pour)).map(([name]) => name);
      if (found.length > 1 || (found[0] ?? 'none') !== alike) return undefined;
      return {
        numbers: {
          maker: watch(maker, 'pour of the maker’s part'),
          longest: watch(FIFTH * maker, 'longest that is alike'),
          shortest: watch(maker / FIFTH, 'shortest that is alike'),
          ...Object.fromEntries(pours.map(([name, pour]) => [name, watch(pour, 'a pour')])),
        },
        cases: Object.fromEntries(
          pours.map(([name, pour]) => [
            `${name}-is`,
            is(pour) ? 'alike' : pour > maker ? 'slow' : 'quick',
          ]),
        ),
        truth: {
          ...Object.fromEntries(pours.map(([name]) => [name, name === alike])),
          none: alike === 'none',
        },
      };
    },
  ),
  'seal-shrinks': family(
    { reach: steps(10, 40, 2), drop: steps(30, 70, 5) },
    ({ reach, drop }) => ({
      numbers: {
        reach: dimension(reach, 'free rubber'),
        drop: entry('temperatureRise', drop, 'cools by'),
        shrinks: mm(reach * (RUBBER_EXPANSION - STEEL_EXPANSION) * drop, 'squeeze lost', {
          'rubber-alone': by(
            'forget that the steel shrinks as well',
            reach * RUBBER_EXPANSION * drop,
          ),
          'as-steel': by(
            'let the rubber shrink as little as the steel',
            reach * STEEL_EXPANSION * drop,
          ),
        }),
      },
    }),
  ),
  'still-squeezed': family(
    {
      seals: ['a', 'b', 'c'],
      reach: steps(8, 20, 1),
      drop: [40, 50, 60],
      spare: [1.4, 1.6, 1.8],
      short: [0.5, 0.6, 0.7],
    },
    ({ seals, reach, drop, spare, short }) => {
      const reaches = { a: reach, b: 2 * reach, c: 3 * reach };
      const each = (['a', 'b', 'c'] as const).map((name) => {
        const loses = reaches[name] * (RUBBER_EXPANSION - STEEL_EXPANSION) * drop;
        const squeeze = Math.round(100 * loses * (name === seals ? spare : short)) / 100;
        return { name, loses, squeeze };
      });
      if (each.some(({ loses, squeeze }) => Math.abs(loses - squeeze) < 0.15 * loses)) {
        return undefined;
      }
      return {
        numbers: {
          drop: entry('temperatureRise', drop, 'cools by'),
          ...Object.fromEntries(
            each.flatMap(({ name, loses, squeeze }) => [
              [`${name}-reach`, dimension(reaches[name], 'free rubber')],
              [`${name}-squeeze`, mm(squeeze, 'squeeze, warm')],
              [`${name}-loses`, mm(loses, 'loses')],
            ]),
          ),
        },
        truth: Object.fromEntries(each.map(({ name, loses, squeeze }) => [name, squeeze > loses])),
      };
    },
  ),
  'let-out': family(
    { over: steps(8, 30, 1), apart: [8, 10, 12, 15], holds: [0.3, 0.4, 0.5, 0.6, 0.8] },
    ({ over, apart, holds }) => {
      const each = holds / apart;
      return over > 0.8 * apart
        ? {
            numbers: {
              over: dimension(over, 'over the middle'),
              apart: dimension(apart, 'between the marks'),
              holds: litres(holds, 'between the marks'),
              out: litres(over * each, 'to let out', {
                'down-to-max': by('stop at MAX, and not at the middle', (over - apart / 2) * each),
                'middle-to-mark': by(
                  'take what the marks hold for what lies between the middle and one mark',
                  2 * over * each,
                ),
              }),
            },
          }
        : undefined;
    },
  ),
};
