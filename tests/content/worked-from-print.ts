/**
 * How a reader works out what a question asks for: from the amounts of the stem, in the order in which they stand there and in SI
 * units (amountsIn). Written here from the laws that the lessons teach, without src. A new question of this kind gets its sum here.
 */
type Sum = (...given: number[]) => number;

const less = (speed: number, times: number, slow: number): number => speed - times * slow;
const springOverArea: Sum = (spring, area) => spring / area;
const onePressure: Sum = (push, small, large) => (push / small) * large;
const byRoot: Sum = (flow, drop, wide) => flow * Math.sqrt(wide / drop);
const takenFromSpin: Sum = (spin, holds, push) => spin / (holds - push);
const shared: Sum = (all, among) => all / among;
const usedMeanwhile: Sum = (aYear, days) => (aYear / 365) * days;
const wherePays: Sum = (costs, left, hundred, renewed) => (costs * hundred) / (left - renewed);
const overTheMarks: Sum = (over, apart, between) => (over / apart) * between;
const displaced: Sum = (volume, speed) => volume * speed;
const cheapFirst = (names: number, cheap: number, dear: number): number =>
  cheap + (dear * (names - 1)) / names;
const rootOfSquares: Sum = (one, other) => Math.hypot(one, other);

/** Amounts to type. */
export const typedSums: Readonly<Record<string, Sum>> = {
  'force-on-the-piston': (area, pressure) => pressure * area,
  'torque-at-command': (faces, radius, friction, spring, push) =>
    (push - spring) * friction * radius * faces,
  'pressure-needed': (torque, squeeze, holds, spring, area) =>
    ((torque / holds) * squeeze + spring) / area,
  'where-it-begins': springOverArea,
  'crane-brake-lets-go': springOverArea,
  'log-splitter-by-hand': onePressure,
  'dynamic-from-kinematic': (_hot, kinematic, density) => kinematic * density,
  'how-much-thinner': (_a40, _at40, _a100, _at100, cold, hot) => cold / hot,
  'worn-pump-hot': (flow, _warm, _line, _hot, thick, thin) => (flow * thick) / thin,
  'rings-cold-to-hot': (flow, _cold, _line, thick, thin) => (flow * thick) / thin,
  'pressure-left-for-speed': (_crack, pressure, _hot, viscous) => pressure * (1 - viscous),
  'spool-worn-wider': (flow, times) => flow * times ** 3,
  'name-the-crossing': (need, _crack, _p1, _t1, enough, good, low, bad) =>
    good + ((bad - good) * (enough - need)) / (enough - low),
  'flow-at-idle': displaced,
  'pump-of-a-log-splitter': displaced,
  'what-is-left': (_hot, pump, clearances, bleeds, forward) => pump - clearances - bleeds - forward,
  'share-of-the-crack': (_hot, _crack, all, rings) => all - rings,
  'feed-at-twice-the-drop': byRoot,
  'oil-jet-on-a-lathe': byRoot,
  'slip-on-the-brake': (output, ratio, turbine) => less(turbine, ratio, output),
  'short-by-how-much': (need, _command, _crack, _cold, _at, has) => need - has,
  'least-time-to-stop': takenFromSpin,
  'winch-drum-let-go': takenFromSpin,
  'slip-in-first': (ratio, turbine, output) => less(turbine, ratio, output),
  'slip-out-of-a-frame': (ratio, turbine, output) => less(turbine, ratio, output),
  'saw-with-a-loose-belt': (times, motor, blade) => less(motor, times, blade),
  'conveyor-with-a-wet-belt': (times, motor, drum) => less(motor, times, drum),
  'limit-at-speed': (floor, share, turbine) => Math.max(floor, share * turbine),
  'raised-by-thirty': (share, command) => command * (1 + share),
  'eight-items-one-line': shared,
  'sensors-of-a-greenhouse': shared,
  'gearbox-of-a-hoist': (fill, swells) => fill * swells,
  'what-reverse-is-asked': (drive, boost) => drive * boost,
  'how-deep-before-it-pays': wherePays,
  'bearing-in-a-well-pump': wherePays,
  'used-while-you-wait': usedMeanwhile,
  'blades-for-a-farm': usedMeanwhile,
  'percent-of-a-rig': (supply, stays) => stays / supply,
  // "A fifth more" is the rule of the lesson.
  'longest-pour-allowed': (pours) => 1.2 * pours,
  // Its numbers are words.
  'eight-names-to-one': () => Math.log2(8),
  'half-the-list-by-gauge': (takes) => 600 / takes,
  'thirty-and-forty': rootOfSquares,
  'mower-that-will-not-start': (names, cheap, dear) => cheapFirst(names, cheap, dear),
  'how-much-comes-out': overTheMarks,
  'gearbox-of-a-mower': overTheMarks,
};

/** ASTM D341: log log (cSt + 0.7) is straight over log T. Its further terms are nothing above 2 cSt. */
function betweenTwo(cold: number, coldAt: number, hot: number, hotAt: number, at: number): number {
  const thick = (viscosity: number) => Math.log10(Math.log10(viscosity * 1e6 + 0.7));
  const way = Math.log10(at / coldAt) / Math.log10(hotAt / coldAt);
  return (10 ** (10 ** (thick(cold) + way * (thick(hot) - thick(cold)))) - 0.7) * 1e-6;
}

/** Air through a hole, for its area and the state before it: Saint-Venant and Wantzel, choked below 0.528 (ISO 6358). */
function airThrough(before: number, behind: number): number {
  const share = Math.max(behind / before, 0.528);
  return before * Math.sqrt(7 * (share ** (2 / 1.4) - share ** (2.4 / 1.4)));
}
const OUTSIDE = 101_325;
/** The lesson's regulator, over the air outside. */
const SUPPLY = 275_000;
/** What leaks out, over a constant, by the absolute pressure in the circuit: a hole lets air out as the feed lets it in. */
type Leak = (pressure: number) => number;
const hole: Leak = (pressure) => airThrough(pressure, OUTSIDE);
/** Viscous and at one temperature, in a gap as between worn rings: as the difference of the squares (Poiseuille). */
const gap: Leak = (pressure) => pressure ** 2 - OUTSIDE ** 2;
/** How many constants of the leak there are for one area of the feed, when this share of the supply is held. */
function leakThatHolds(held: number, leak: Leak): number {
  const pressure = OUTSIDE + held * SUPPLY;
  return airThrough(OUTSIDE + SUPPLY, pressure) / leak(pressure);
}
function heldBefore(constants: number, leak: Leak): number {
  let [low, high] = [1e-6, 1];
  for (let i = 0; i < 60; i += 1) {
    const middle = (low + high) / 2;
    if (leakThatHolds(middle, leak) > constants) low = middle;
    else high = middle;
  }
  return low;
}

/** Base stock, Poisson: the fewest with which nine in ten find one on the shelf. */
function shelfFor(mean: number): number {
  let [keep, found, term] = [0, 0, Math.exp(-mean)];
  while (found < 0.9) {
    found += term;
    keep += 1;
    term *= mean / keep;
  }
  return keep;
}

/** Amounts to choose among: the one that is nearest. */
export const chosenSums: Readonly<Record<string, Sum>> = {
  'two-mm-on-the-rig': (feeds, leaks) => heldBefore((leaks / feeds) ** 2, hole),
  'hole-bored-out': (_narrow, held, _wide, times) =>
    heldBefore(leakThatHolds(held, gap) / times, gap),
  'worth-eight-hours-deep': (access, left, hundred, renewed) =>
    (access * (left - renewed)) / hundred,
  'a-year-of-new-filters': (costs, access, renewed, hundred, _left, cars) =>
    cars * (costs + (renewed / hundred) * access),
  'filters-on-the-shelf': shelfFor,
  'high-clutch-spared': (_crack, _hot, _low, sound) => sound,
  'between-the-two-numbers': betweenTwo,
  'press-oil-at-sixty': betweenTwo,
  'torque-at-idle': (at, torque, times, idle) => torque * (idle / at) ** 2 * times,
  'torque-at-twice-idle': (idle, torque, fast) => torque * (fast / idle) ** 2,
  'longest-that-fits': (_step, park, _drive, _turned, stood) => stood - park,
  'cheap-check-first': (names, cheap, _others, dear) => cheapFirst(names, cheap, dear),
  // The lesson has the fluid swell by 7 % over 80 °C.
  'plug-opened-too-hot': (fill, middle, hot) => (fill * 0.07 * (hot - middle)) / 80,
  'press-seal-shrinks': (cools, free) => 108e-6 * cools * free,
  'press-with-two-gauges': rootOfSquares,
  'low-command-under-load': (idle, reads, _cold, _again, _hot, _at, _fast, load) =>
    (reads / idle) * load,
  'starved-pump-at-speed': (_cold, flow) => flow,
  // Its numbers are words: rings, drums, air, bridge, body, pan.
  'gap-not-measured': () => 6,
  'reverse-beside-worn-rings': (_hot, _low, sound, boost) => sound * boost,
  'two-from-six-in-five': (_names, _taken, _rest, takes, worth) => (600 / takes) * worth,
  'the-lost-key': (boxes) => Math.log2(boxes),
  // Density, a few per cent, is left out, as the stem says "about".
  'missing-plug-hot': (_hole, flow) => flow,
  'press-sinks-the-same': (_hole, flow) => flow,
  'hand-press': onePressure,
  'half-the-friction': (torque, _pressure, left) => torque * left,
  'sensor-says-three-hundred': (reads) => reads,
  'a-quarter-of-the-media': (_frost, media, from, lessMedia) => (from * lessMedia) / media,
  'media-from-two-pours': (ours, theirs) => ours / theirs,
};

/** Where no reader has all that the model has, and the printed amounts leave one option between two limits. */
export const chosenBetween: Readonly<
  Record<string, (...given: number[]) => readonly [number, number]>
> = {
  'thinner-fluid-crossing': (_crack, holds) => [273.15, holds],
  // A larger share of the command arrives, and not all of it.
  'pump-at-fifteen-hundred': (_hot, reads, _idle, idleCommand, _fast, command) => [
    1.03 * (reads / idleCommand) * command,
    0.97 * command,
  ],
  // More than the share of the area, and well under what it fills to, cold.
  'feed-mostly-shut': (area, _cold, fills) => [1.1 * area * fills, 0.95 * fills],
  'choked-by-the-cable': (area, _cold, fills) => [1.1 * area * fills, 0.95 * fills],
  // Between a hole and a thin gap.
  'wide-crack-hot': (_crack, flow, _cold, _pressure, thinner) => [
    1.03 * flow,
    0.97 * flow * thinner,
  ],
};
