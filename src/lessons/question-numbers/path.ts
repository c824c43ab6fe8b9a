import { benchOf, makeCar, oneFault, REFERENCE_CRACK_MM } from '../../car/index.ts';
import { faultAmount, training, type FaultSet } from '../../engine/index.ts';
import { gapLeak, holeLeak, steady } from './ask-engine.ts';
import { quoted, type QuestionNumbers } from './form.ts';

const ringWear = oneFault('sealingRings', 40);
const openPort = oneFault('openPort', 70);
const pistonCut = oneFault('pistonSeal', 80);
const fadingValve = oneFault('clutchControl', 80);
const starvedFeed = oneFault('feedRestriction', 80);

const forwardAt = (tempC: number, faults: FaultSet): number =>
  steady({ tempC, faults }).clutchKpa.forward;
const reverseAt = (tempC: number, faults: FaultSet): number =>
  steady({ tempC, faults, applied: ['reverse'] }).clutchKpa.reverse;

/** Feed hole of the training transmission, 1.9 mm, at 100 °C. */
const feedHole = (kPa: number): number => holeLeak({ diameterMm: 1.9, kPa, tempC: 100 });

const cracked = () => steady({ tempC: 100, crackMm: REFERENCE_CRACK_MM });
/** What the good rings lose at the pressure that the cracked circuit has left. */
function ringsBesideCrack(): number {
  const { width, height, length } = training.leaks.forward.rings;
  return gapLeak({
    widthMm: width * 1e3,
    heightMm: height * 1e3,
    lengthMm: length * 1e3,
    kPa: cracked().clutchKpa.forward,
    tempC: 100,
  }).flow;
}

export const path: QuestionNumbers = {
  'ring-wear-forward-hot': quoted('pressure', 'forward, worn rings, 100 °C idle', () =>
    forwardAt(100, ringWear),
  ),
  'healthy-forward-hot': quoted('pressure', 'forward, healthy, 100 °C idle', () =>
    forwardAt(100, {}),
  ),
  'port-forward-cold': quoted('pressure', 'forward, open port, 20 °C idle', () =>
    forwardAt(20, openPort),
  ),
  'port-forward-hot': quoted('pressure', 'forward, open port, 100 °C idle', () =>
    forwardAt(100, openPort),
  ),
  'piston-forward-cold': quoted('pressure', 'forward, cut piston seal, 20 °C idle', () =>
    forwardAt(20, pistonCut),
  ),
  'piston-forward-hot': quoted('pressure', 'forward, cut piston seal, 100 °C idle', () =>
    forwardAt(100, pistonCut),
  ),
  'valve-forward-hot': quoted('pressure', 'forward, valve that fades hot, 100 °C idle', () =>
    forwardAt(100, fadingValve),
  ),
  'feed-forward-cold': quoted('pressure', 'forward, restricted feed, 20 °C idle', () =>
    forwardAt(20, starvedFeed),
  ),
  'cracked-forward-leak': quoted(
    'flow',
    'all that the cracked circuit loses, 100 °C idle',
    () => cracked().leakLmin.forward,
  ),
  'rings-beside-crack': quoted(
    'flow',
    'rings of the cracked circuit, 100 °C idle',
    ringsBesideCrack,
  ),
  'feed-hole-200': quoted('flow', 'feed hole at a drop of 200 kPa, 100 °C', () => feedHole(200)),
  'air-forward-healthy': quoted(
    'percent',
    'air test of a healthy forward circuit, held',
    () => benchOf(makeCar({})).forward,
  ),
  'air-forward-piston': quoted(
    'percent',
    'air test, cut piston seal, held',
    () => benchOf(makeCar({ faults: pistonCut })).forward,
  ),
  'air-seal-cracked': quoted(
    'percent',
    'air test of the transfer seal alone, 0.25 mm, held',
    () => benchOf(makeCar({ crackMm: REFERENCE_CRACK_MM })).transferSeal,
  ),

  'crack-part': {
    quantity: 'flow',
    what: 'what goes through the crack, 0.25 mm, 100 °C idle',
    value: () => cracked().leakLmin.forward - ringsBesideCrack(),
    wrong: {
      'all-of-it': {
        mistake: 'blame the crack for everything',
        value: () => cracked().leakLmin.forward,
      },
      'ring-part': { mistake: 'take what the rings lose', value: () => ringsBesideCrack() },
      added: {
        mistake: 'add the rings a second time',
        value: () => cracked().leakLmin.forward + ringsBesideCrack(),
      },
    },
  },
  'reverse-beside-rings': {
    quantity: 'pressure',
    what: 'reverse, rings of forward worn, 100 °C idle',
    value: () => reverseAt(100, ringWear),
    wrong: {
      'same-as-forward': {
        mistake: 'let one pair of rings hurt both clutches',
        value: () => forwardAt(100, ringWear),
      },
      'not-boosted': {
        mistake: 'leave out that Reverse is boosted',
        value: () => forwardAt(100, {}),
      },
      halfway: {
        mistake: 'give reverse half of the loss',
        value: () => (forwardAt(100, ringWear) + reverseAt(100, ringWear)) / 2,
      },
    },
  },
  'feed-forward-hot': {
    quantity: 'pressure',
    what: 'forward, restricted feed, 100 °C idle',
    value: () => forwardAt(100, starvedFeed),
    wrong: {
      'area-share': {
        mistake: 'cut the pressure by the same share as the area',
        value: () => 400 * faultAmount('feedRestriction', 0.8),
      },
      unchanged: {
        mistake: 'let a small hole fill the clutch to full pressure in the end',
        value: () => forwardAt(100, {}),
      },
    },
  },
  'feed-hole-400': {
    quantity: 'flow',
    what: 'feed hole at a drop of 400 kPa, 100 °C',
    value: () => feedHole(400),
    wrong: {
      doubled: {
        mistake: 'double the flow with the pressure, as in a thin gap',
        value: () => 2 * feedHole(200),
      },
      unchanged: { mistake: 'let the hole alone set the flow', value: () => feedHole(200) },
      fourfold: {
        mistake: 'square the pressure instead of taking the root',
        value: () => 4 * feedHole(200),
      },
    },
  },
};
