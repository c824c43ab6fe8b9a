/**
 * The textbook forms the gap and hole laws are held against, offered for worked examples and the model page.
 * The circuits do not use them.
 */

/**
 * Laminar flow through a flat slot.
 *
 * Equation: Q = w h^3 dp / (12 mu L).
 *
 * @param slot width, height, length [m], dp [Pa], dynamic viscosity [Pa s]
 * @returns flow [m3/s]
 * Range: gap Reynolds number up to about 1400 (Fox and McDonald), no end losses.
 * Source: Rabie (2009) eq. 2.19.
 * @example
 * slotFlow({ width: 0.05, height: 0.001, length: 0.15, dp: 2e5, dynamic: 0.08 }) // 6.9444e-5
 */
export function slotFlow(slot: {
  readonly width: number;
  readonly height: number;
  readonly length: number;
  readonly dp: number;
  readonly dynamic: number;
}): number {
  return (slot.width * slot.height ** 3 * slot.dp) / (12 * slot.dynamic * slot.length);
}

/**
 * Laminar flow past a piston or spool: a thin ring gap, concentric or not.
 *
 * Equation: Q = pi D c^3 dp / (12 mu L) (1 + 1.5 e^2), e the eccentricity from 0 to 1.
 *
 * @param ring diameter, clearance (radial), length [m], dp [Pa], dynamic [Pa s], eccentricity [-]
 * @returns flow [m3/s]
 * Range: clearance small against diameter.
 * Source: Rabie (2009) eq. 2.19; 2.5 times at full eccentricity is the usual form.
 * @example
 * annulusFlow({ diameter: 0.025, clearance: 5e-6, length: 0.015, dp: 19e6, dynamic: 0.018 }) // 5.75716e-8
 */
export function annulusFlow(ring: {
  readonly diameter: number;
  readonly clearance: number;
  readonly length: number;
  readonly dp: number;
  readonly dynamic: number;
  readonly eccentricity?: number;
}): number {
  const e = ring.eccentricity ?? 0;
  return (
    slotFlow({ ...ring, width: Math.PI * ring.diameter, height: ring.clearance }) *
    (1 + 1.5 * e * e)
  );
}

/**
 * Laminar flow through a concentric annulus of any thickness.
 *
 * Equation: Q = pi dp / (8 mu L) (ro^4 - ri^4 - (ro^2 - ri^2)^2 / ln(ro / ri)).
 *
 * @param ring outer and inner radius, length [m], dp [Pa], dynamic [Pa s]
 * @returns flow [m3/s]
 * Range: outer above inner, inner above zero.
 * Source: exact solution of the annulus, any text on viscous flow (Massey).
 * @example
 * annulusFlowExact({ outer: 0.0125, inner: 0.012, length: 0.015, dp: 1e5, dynamic: 0.02 }) // 2.67261e-4
 */
export function annulusFlowExact(ring: {
  readonly outer: number;
  readonly inner: number;
  readonly length: number;
  readonly dp: number;
  readonly dynamic: number;
}): number {
  const o2 = ring.outer ** 2;
  const i2 = ring.inner ** 2;
  const shape = o2 * o2 - i2 * i2 - (o2 - i2) ** 2 / Math.log(ring.outer / ring.inner);
  return (Math.PI * ring.dp * shape) / (8 * ring.dynamic * ring.length);
}

/**
 * Laminar flow outward between two flat discs.
 *
 * Equation: Q = pi h^3 p / (6 mu ln(R2 / R1)).
 *
 * @param discs height [m], ratio of radii [-], dp [Pa], dynamic [Pa s]
 * @returns flow [m3/s]
 * Range: height small against the radii.
 * Source: Massey, Mechanics of Fluids, example 6.2.
 * @example
 * radialFlow({ height: 0.001, radiusRatio: 6, dp: 15000, dynamic: 0.6 }) // 7.30565e-6
 */
export function radialFlow(discs: {
  readonly height: number;
  readonly radiusRatio: number;
  readonly dp: number;
  readonly dynamic: number;
}): number {
  return (
    (Math.PI * discs.height ** 3 * discs.dp) / (6 * discs.dynamic * Math.log(discs.radiusRatio))
  );
}

/**
 * Turbulent flow through an orifice.
 *
 * Equation: Q = Cd A sqrt(2 dp / rho).
 *
 * @param orifice discharge [-], area [m2], dp [Pa], density [kg/m3]
 * @returns flow [m3/s]
 * Range: high Reynolds number.
 * Source: Rabie (2009) eq. 2.37.
 * @example
 * orificeFlow({ discharge: 0.8, area: 5.0670748e-4, dp: 689475.7, density: 900 }) // 0.0158672
 */
export function orificeFlow(orifice: {
  readonly discharge: number;
  readonly area: number;
  readonly dp: number;
  readonly density: number;
}): number {
  return orifice.discharge * orifice.area * Math.sqrt((2 * orifice.dp) / orifice.density);
}
