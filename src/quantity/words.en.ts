/** What the printer and the parser say by themselves. Amounts come in printed. */
export const words = {
  /** For lists and plurals. */
  locale: 'en-US',
  noValue: 'no value',
  /** The unit of a crack, which is a word. */
  thousandths: 'thousandths',
  empty: 'There is no number yet.',
  noNumber: (p: { text: string }) => `“${p.text}” does not start with a number.`,
  twoNumbers: (p: { text: string }) => `“${p.text}” cannot be read as one number.`,
  unknownUnit: (p: { unit: string; quantity: string }) =>
    `“${p.unit}” is no unit of ${p.quantity} here.`,
  range: (p: { min: string; max: string }) => `${p.min} to ${p.max}`,
  above: (p: { value: string; range: string }) =>
    `${p.value} is above what is allowed here: ${p.range}.`,
  below: (p: { value: string; range: string }) =>
    `${p.value} is below what is allowed here: ${p.range}.`,
  /** `units`: "psi or kPa". `example`: "250 psi". */
  write: (p: { example: string }) => `Write a number, such as ${p.example}.`,
  writeWithUnit: (p: { units: string; example: string }) =>
    `Write a number with ${p.units}, such as ${p.example}.`,
  writeInRange: (p: { range: string; example: string }) =>
    `Write a number, ${p.range}, such as ${p.example}.`,
  writeInRangeWithUnit: (p: { units: string; range: string; example: string }) =>
    `Write a number with ${p.units}, ${p.range}, such as ${p.example}.`,
};

/** How that locale marks thousands and decimals; see language.ts. */
export const marks = ',.';
