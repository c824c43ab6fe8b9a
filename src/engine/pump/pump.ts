/** A pump turned by the engine, and the filter it draws through. */
export interface Pump {
  /** Displacement of one turn [m3/rev]. */
  readonly displacement: number;
  /** Wilson slip coefficient [-]. */
  readonly slip: number;
  /** Suction resistance of filter and pick-up [1/m3]: flow = pressure / (dynamic viscosity x resistance). */
  readonly suctionResistance: number;
  /** Greatest pressure the atmosphere can spare to push fluid through the filter [Pa]. */
  readonly suctionLimit: number;
}

/**
 * What the pump takes in, limited by its size or by the filter.
 *
 * Equation: Qin = min(Vd n (1 - air), dpMax / (mu Rf)).
 *
 * @param pump displacement [m3/rev], suctionResistance [1/m3], suctionLimit [Pa]
 * @param speed [rev/s]
 * @param dynamic dynamic viscosity [Pa s]
 * @param air part of what is drawn that is air, see airDrawn; none where left out [-]
 * @returns flow [m3/s]
 * Range: speed zero and above, air 0 to 1.
 * Leaves out: cavitation noise and damage; a starved pump here only delivers less.
 * Source: continuity and Darcy's law for the filter; the form is ours, the cold starvation it shows is common
 * practice, no source.
 * @example
 * pumpIntake({ displacement: 15e-6, slip: 3e-8, suctionResistance: 3.4e8, suctionLimit: 6e4 }, 10, 0.005) // 1.5e-4
 */
export function pumpIntake(pump: Pump, speed: number, dynamic: number, air = 0): number {
  return Math.min(
    pump.displacement * speed * (1 - air),
    pump.suctionLimit / (dynamic * pump.suctionResistance),
  );
}

/**
 * Backflow within the pump for each pascal of delivery pressure.
 *
 * Equation: Cs Vd / (2 pi mu).
 *
 * @param pump slip [-], displacement [m3/rev]
 * @param dynamic dynamic viscosity [Pa s]
 * @returns flow per pressure [m3/s/Pa]
 * Range: dynamic viscosity above zero.
 * Source: Wilson's slip law; see pumpFlow.
 * @example
 * pumpSlipPerPascal({ displacement: 15e-6, slip: 3e-8, suctionResistance: 3.4e8, suctionLimit: 6e4 }, 0.005) // 1.432394e-11
 */
export function pumpSlipPerPascal(pump: Pump, dynamic: number): number {
  return (pump.slip * pump.displacement) / (2 * Math.PI * dynamic);
}

/**
 * What the pump delivers against a pressure.
 *
 * Equation: Qp = Qin - Cs Vd p / (2 pi mu). The slip does not depend on speed, so a worn pump is worst at idle.
 *
 * @param pump displacement [m3/rev], slip [-], filter
 * @param at speed [rev/s], pressure [Pa], dynamic viscosity [Pa s], air drawn [-]
 * @returns flow [m3/s]
 * Range: speed and pressure zero and above; may come out negative where slip exceeds intake.
 * Leaves out: the part of pump leakage that behaves like an orifice and so stays when cold (Schloesser's term).
 * Source: Wilson's slip law, as in McCandlish and Dorey, Proc. IMechE 198B (1984); coefficient invented.
 * @example
 * pumpFlow({ displacement: 1e-5, slip: 1.8e-9, suctionResistance: 0, suctionLimit: 6e4 }, { speed: 25, pressure: 20e6, dynamic: 0.036 }) // 2.484e-4
 */
export function pumpFlow(
  pump: Pump,
  at: {
    readonly speed: number;
    readonly pressure: number;
    readonly dynamic: number;
    readonly air?: number;
  },
): number {
  return (
    pumpIntake(pump, at.speed, at.dynamic, at.air) -
    pumpSlipPerPascal(pump, at.dynamic) * at.pressure
  );
}
