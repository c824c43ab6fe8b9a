/** A piston that turns with its clutch, and what the spinning fluid behind it does. */
export interface RotatingPiston {
  /** Inner and outer radius of the piston face [m]. */
  readonly innerRadius: number;
  readonly outerRadius: number;
  /** Radius at which the fluid enters, where the head begins [m]; the shaft's feed hole. */
  readonly feedRadius: number;
  /** True where a balance chamber holds the same fluid on the other side. */
  readonly compensated: boolean;
}

/**
 * Force of the spinning fluid on a rotating piston: it applies the clutch with no pressure commanded.
 *
 * Equation: dp = rho w^2 (r^2 - r_f^2) / 2; F = pi rho w^2 [(ro^4 - ri^4) / 4 - r_f^2 (ro^2 - ri^2) / 2]; with
 * r_f = ri it is pi rho w^2 (ro^2 - ri^2)^2 / 4. A balance chamber fed at the same radius takes all of it away.
 *
 * @param piston innerRadius, outerRadius, feedRadius [m], compensated
 * @param density [kg/m3]
 * @param speed [rad/s]
 * @returns force [N]
 * Range: outer radius above inner.
 * Leaves out: a balance chamber smaller than the piston, which cancels only part.
 * Source: pressure of a liquid in solid-body rotation, any text on fluid mechanics (Massey, ch. 2); integral ours.
 * @example
 * rotatingPistonForce({ innerRadius: 0.05, outerRadius: 0.07, feedRadius: 0.05, compensated: false }, 800, 600) // 1302.88
 */
export function rotatingPistonForce(
  piston: RotatingPiston,
  density: number,
  speed: number,
): number {
  if (piston.compensated) return 0;
  const o2 = piston.outerRadius ** 2;
  const i2 = piston.innerRadius ** 2;
  const f2 = piston.feedRadius ** 2;
  return Math.PI * density * speed * speed * ((o2 * o2 - i2 * i2) / 4 - (f2 * (o2 - i2)) / 2);
}
