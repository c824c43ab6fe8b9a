/** The clutch circuits a transmission has. Which of them pass through the transfer seal, its sheet says. */
export const CIRCUITS = ['forward', 'reverse', 'high'] as const;
/** Name of a clutch circuit. */
export type Circuit = (typeof CIRCUITS)[number];
/** One value for each circuit. */
export type PerCircuit<Value> = Readonly<Record<Circuit, Value>>;

/** The gears whose clutches an apply chart names. */
export const GEARS = ['R', '1', '2', '3', '4'] as const;
/** Name of a gear as an apply chart prints it. */
export type Gear = (typeof GEARS)[number];
