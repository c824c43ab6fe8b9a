import { faultAmount, training, type Circuit, type FaultSet } from '../engine/index.ts';
import { holeLeak, read, tapKpa } from './ask.ts';
import {
  choked,
  has,
  highRings,
  holeMm,
  loses,
  losses,
  piston,
  rings,
  split,
  widest,
} from './circuit-asks.ts';
import { kPa, lmin, mm, percent, type Entries, type WrongRules } from './entry.ts';

const hot = (faults: FaultSet, circuit: Circuit = 'forward'): number =>
  tapKpa({ faults, tempC: 100, circuit });
const healthyHot = hot({});

const line = (what: string, faults: FaultSet, circuit: Circuit) =>
  kPa(
    read({ faults, tempC: 100, circuit }).lineKpa,
    `line at idle with ${circuit} applied, ${what}, 100 °C`,
  );
const splitLosses = losses(split, 100);

const feedHoleMm = holeMm(training.feed.area);
const feedHole = (drop: number, wrong?: WrongRules) =>
  lmin(holeLeak(feedHoleMm, 100, drop), `feed hole, ${drop} kPa across it, 100 °C`, wrong);
export const regulatorToClutch: readonly Entries[] = [
  {
    'feed-hole-size': mm(feedHoleMm, 'feed hole, diameter'),
    'drop-200': kPa(200, 'a pressure drop chosen for the lesson'),
    'drop-400': kPa(400, 'a pressure drop chosen for the lesson'),
    'feed-hole-200': feedHole(200),
    'feed-hole-400': feedHole(400, {
      doubled: {
        mistake: 'double the flow with the pressure, as in a thin gap',
        value: 2 * holeLeak(feedHoleMm, 100, 200),
      },
      unchanged: {
        mistake: 'let the hole alone set the flow',
        value: holeLeak(feedHoleMm, 100, 200),
      },
      fourfold: {
        mistake: 'square the pressure instead of taking the root',
        value: 4 * holeLeak(feedHoleMm, 100, 200),
      },
    }),
    'widest-clutch-20': has('widest crack', widest, 20),
    'widest-clutch-100': has('widest crack', widest, 100),
    'widest-line-100': line('widest crack', widest, 'forward'),
    'split-line-reverse-100': line('split transfer seal', split, 'reverse'),
    'healthy-line-reverse-100': line('healthy', {}, 'reverse'),
    'healthy-forward-20': has('healthy', {}, 20),
    'healthy-forward-100': has('healthy', {}, 100),
    'healthy-reverse-100': has('healthy', {}, 100, 'reverse'),
    'healthy-high-100': has('healthy', {}, 100, 'high'),
    'choked-left': percent(100 * faultAmount('feedRestriction', 0.8), 'feed area left'),
    'choked-20': has('choked feed', choked, 20),
    'choked-100': has('choked feed', choked, 100, 'forward', {
      'area-share': {
        mistake: 'cut the pressure by the same share as the area',
        value: 400 * faultAmount('feedRestriction', 0.8),
      },
      unchanged: {
        mistake: 'let a small hole fill the clutch to full pressure in the end',
        value: healthyHot,
      },
    }),
    'split-reverse-100': has('split transfer seal', split, 100, 'reverse'),
    'rings-20': has('worn rings', rings, 20),
    'rings-100': has('worn rings', rings, 100),
    'rings-reverse-100': has('worn rings on forward', rings, 100, 'reverse', {
      'same-as-forward': {
        mistake: 'let one pair of rings hurt both clutches',
        value: hot(rings),
      },
      'not-boosted': { mistake: 'leave out that Reverse is boosted', value: healthyHot },
      halfway: {
        mistake: 'give reverse half of the loss',
        value: (hot(rings) + hot(rings, 'reverse')) / 2,
      },
    }),
    'rings-high-100': has('worn rings on forward', rings, 100, 'high'),
    'high-rings-100': has('worn rings on high', highRings, 100, 'high'),
    'high-rings-forward-100': has('worn rings on high', highRings, 100, 'forward'),
    'high-rings-reverse-100': has('worn rings on high', highRings, 100, 'reverse'),
  },
  loses('piston-loss', 'cut piston seal', piston, 100),
  loses('split-loss', 'split transfer seal', split, 100, {
    'all-of-it': { mistake: 'blame the crack for everything', value: splitLosses.all },
    'ring-part': { mistake: 'take what the rings lose', value: splitLosses.rings },
    added: {
      mistake: 'add the rings a second time',
      value: splitLosses.all + splitLosses.rings,
    },
  }),
];
