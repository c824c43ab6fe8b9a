/**
 * The one error the engine throws: a sentence for a person, naming the value given and what is allowed.
 * Callers that must answer anyway (the command line, a field on a page) catch this type and no other.
 */
export class EngineError extends Error {
  override readonly name = 'EngineError';
  /** Which argument was wrong, in the caller's own words where it gave any. */
  readonly argument: string;

  constructor(argument: string, message: string) {
    super(message);
    this.argument = argument;
  }
}

/** What a quantity may be; `unit` is printed after both numbers. */
export interface Allowed {
  readonly name: string;
  readonly unit: string;
  readonly min: number;
  readonly max: number;
}

/**
 * A value if it is a finite number within its allowed range.
 *
 * @param value what was given [the unit of allowed]
 * @param allowed name, unit, min and max [its own unit]
 * @returns the value itself [the unit of allowed]
 * Range: min to max, both ends included.
 * @throws EngineError otherwise: the sentence with the value and both ends.
 * Source: none; a check, not physics.
 * @example
 * requireInRange(40, { name: 'Temperature', unit: 'C', min: -30, max: 140 }) // 40
 */
export function requireInRange(value: number, allowed: Allowed): number {
  if (Number.isFinite(value) && value >= allowed.min && value <= allowed.max) return value;
  const unit = allowed.unit === '' ? '' : ` ${allowed.unit}`;
  const given = Number.isFinite(value) ? `${value}${unit}` : 'not a number';
  throw new EngineError(
    allowed.name,
    `${allowed.name} is ${given}; it must be from ${allowed.min} to ${allowed.max}${unit}.`,
  );
}
