/** A row of a table on the model page: the value is read from the engine or src/numbers, never typed. */
export interface Row {
  readonly what: string;
  readonly value: string;
}

export const number = (value: number): string => String(Number(value.toPrecision(6)));

/** 3e-8 as 3 × 10⁻⁸. */
export const power = (value: number): string => {
  const [digits = '', exponent = ''] = value.toExponential().split('e');
  const raised = Array.from(exponent.replace('+', ''))
    .map((sign) => (sign === '-' ? '⁻' : ('⁰¹²³⁴⁵⁶⁷⁸⁹'[Number(sign)] ?? '')))
    .join('');
  return `${digits} × 10${raised}`;
};

/** Plain where a person would write it plain. */
export const shownNumber = (value: number): string =>
  value !== 0 && (Math.abs(value) < 1e-4 || Math.abs(value) >= 1e6) ? power(value) : number(value);

/** Units as the engine writes them, in ASCII, as a page prints them. */
export const shownUnit = (unit: string): string =>
  unit
    .replace('1/m3', 'per m³')
    .replace('m3/Pa', 'm³/Pa')
    .replace('cm2', 'cm²')
    .replace('cm3', 'cm³')
    .replace('kg m2', 'kg·m²')
    .replace('sqrt(N m)', '√(N·m)')
    .replace(/^um$/, 'µm');
