/** The two systems a page can be read in. Where the whole site says `si` it means metric as a shop uses it: kPa, °C, km/h. */
export type UnitSystem = 'si' | 'us';

/** Text, or text that depends on the reader's units. */
export type UnitText = string | ((system: UnitSystem) => string);

export const textFor = (text: UnitText, system: UnitSystem): string =>
  typeof text === 'function' ? text(system) : text;

export const otherSystem = (system: UnitSystem): UnitSystem => (system === 'si' ? 'us' : 'si');
