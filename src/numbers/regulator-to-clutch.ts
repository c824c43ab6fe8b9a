import { faultAmount, training, type Circuit, type FaultSet } from '../engine/index.ts';
import { holeLeak, read } from './ask.ts';
import {
  choked,
  has,
  highRings,
  holeMm,
  loses,
  piston,
  rings,
  split,
  widest,
} from './circuit-asks.ts';
import { kPa, lmin, mm, percent, type Entries } from './entry.ts';

const line = (what: string, faults: FaultSet, circuit: Circuit) =>
  kPa(
    read({ faults, tempC: 100, circuit }).lineKpa,
    `line at idle with ${circuit} applied, ${what}, 100 °C`,
  );

const feedHoleMm = holeMm(training.feed.area);
const feedHole = (drop: number) =>
  lmin(holeLeak(feedHoleMm, 100, drop), `feed hole, ${drop} kPa across it, 100 °C`);

export const regulatorToClutch: readonly Entries[] = [
  {
    'feed-hole-size': mm(feedHoleMm, 'feed hole, diameter'),
    'drop-200': kPa(200, 'a pressure drop chosen for the lesson'),
    'drop-400': kPa(400, 'a pressure drop chosen for the lesson'),
    'feed-hole-200': feedHole(200),
    'feed-hole-400': feedHole(400),
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
    'choked-100': has('choked feed', choked, 100, 'forward'),
    'split-reverse-100': has('split transfer seal', split, 100, 'reverse'),
    'rings-20': has('worn rings', rings, 20),
    'rings-100': has('worn rings', rings, 100),
    'rings-reverse-100': has('worn rings on forward', rings, 100, 'reverse'),
    'rings-high-100': has('worn rings on forward', rings, 100, 'high'),
    'high-rings-100': has('worn rings on high', highRings, 100, 'high'),
    'high-rings-forward-100': has('worn rings on high', highRings, 100, 'forward'),
    'high-rings-reverse-100': has('worn rings on high', highRings, 100, 'reverse'),
  },
  loses('piston-loss', 'cut piston seal', piston, 100),
];
