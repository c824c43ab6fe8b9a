/** What one more part on the bench costs, and what a car costs that comes back. */

/** A part that lies open while the transmission is apart, by a shop's own figures. */
export interface OpenPart {
  /** Labor to get in and out again [h]. */
  readonly accessH: number;
  /** Labor on top while it is open [h]. */
  readonly extraH: number;
  /** What the part costs [money]. */
  readonly price: number;
  /** What an hour of the shop is sold for [money/h]. */
  readonly hourRate: number;
  /** What a comeback costs beside the hours: loaner, tow, name [money]. */
  readonly beside: number;
  /** Chance that the car comes back for this part if it is left [0 to 1]. */
  readonly left: number;
  /** The same chance if the part is renewed [0 to 1]. */
  readonly renewed: number;
}

/** What a number of like cars cost, in hours of the shop. */
export interface Bills {
  /** Comebacks of the cars on which the part was left [h]. */
  readonly left: number;
  /** Work and part on every car [h]. */
  readonly work: number;
  /** Comebacks of the cars on which it was renewed [h]. */
  readonly comebacks: number;
}

function chance(share: number): number {
  if (!(share >= 0 && share <= 1))
    throw new RangeError(`A chance is a share from 0 to 1; this one is ${String(share)}.`);
  return share;
}

function inHours(money: number, hourRate: number): number {
  if (!(hourRate > 0))
    throw new RangeError(`An hour of the shop has to cost more than 0; got ${String(hourRate)}.`);
  return money / hourRate;
}

/**
 * What a comeback costs: the access a second time, and what comes on top of the hours.
 *
 * Equation: C = access + beside / hourRate.
 *
 * @param part accessH [h], beside [money], hourRate [money/h]
 * @returns hours of the shop [h]
 * Range: hourRate above 0, the rest 0 or more.
 * Source: arithmetic.
 * Leaves out: the part itself, which a second visit has to pay for as well.
 * @example
 * comebackHours({ accessH: 6, extraH: 0, price: 0, hourRate: 100, beside: 400, left: 0.08, renewed: 0.02 }) // 10
 */
export const comebackHours = (part: OpenPart): number =>
  part.accessH + inHours(part.beside, part.hourRate);

/**
 * What it costs to renew the part now.
 *
 * Equation: E = extra + price / hourRate.
 *
 * @param part extraH [h], price [money], hourRate [money/h]
 * @returns hours of the shop [h]
 * Range: hourRate above 0, the rest 0 or more.
 * Source: arithmetic.
 * @example
 * extraHours({ accessH: 6, extraH: 0.1, price: 10, hourRate: 100, beside: 0, left: 0.08, renewed: 0.02 }) // 0.2
 */
export const extraHours = (part: OpenPart): number =>
  part.extraH + inHours(part.price, part.hourRate);

/**
 * What renewing the part is worth on one car: it pays as long as it costs less.
 *
 * Equation: W = (left - renewed) C.
 *
 * @param part chances [0 to 1], and what a comeback costs, see comebackHours [h]
 * @returns hours of the shop; below 0 where renewing raises the chance [h]
 * Range: chances from 0 to 1.
 * Source: expected value; any text on probability.
 * @example
 * worthHours({ accessH: 6, extraH: 0, price: 0, hourRate: 100, beside: 0, left: 0.08, renewed: 0.02 }) // 0.36
 */
export const worthHours = (part: OpenPart): number =>
  (chance(part.left) - chance(part.renewed)) * comebackHours(part);

/**
 * What a number of like cars cost on the average, with the part left and with it renewed.
 *
 * Equation: left = n p0 C; renewed = n E + n p1 C.
 *
 * @param part the part, by the shop's own figures [h, money]
 * @param cars how many [-]
 * @returns the bills [h]
 * Range: chances from 0 to 1, cars 0 or more.
 * Source: expected value; any text on probability.
 * @example
 * billsOver({ accessH: 6, extraH: 0.2, price: 0, hourRate: 100, beside: 0, left: 0.08, renewed: 0.02 }, 20).left // 9.6
 * billsOver({ accessH: 6, extraH: 0.2, price: 0, hourRate: 100, beside: 0, left: 0.08, renewed: 0.02 }, 20).work // 4
 * billsOver({ accessH: 6, extraH: 0.2, price: 0, hourRate: 100, beside: 0, left: 0.08, renewed: 0.02 }, 20).comebacks // 2.4
 */
export function billsOver(part: OpenPart, cars: number): Bills {
  const again = cars * comebackHours(part);
  return {
    left: chance(part.left) * again,
    work: cars * extraHours(part),
    comebacks: chance(part.renewed) * again,
  };
}

/**
 * Chance that exactly so many of a number of like cars come back.
 *
 * Equation: n! / (k! (n - k)!) p^k (1 - p)^(n - k).
 *
 * @param cars how many were done [-]
 * @param share chance of one [0 to 1]
 * @param back how many come back [-]
 * @returns chance [0 to 1]
 * Range: whole numbers, back from 0 to cars.
 * Source: binomial distribution; any text on probability. Cars come back each by itself.
 * @example
 * comebacksAmong(20, 0.08, 0) // 0.1887
 */
export function comebacksAmong(cars: number, share: number, back: number): number {
  let result = 1;
  const [p, q] = [chance(share), 1 - share];
  for (let i = 1; i <= back; i += 1) result *= (p * (cars - back + i)) / i;
  for (let i = 0; i < cars - back; i += 1) result *= q;
  return result;
}
