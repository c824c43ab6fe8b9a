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
  /** `units`: "psi or kPa". `range`: "0 psi to 250 psi". `example`: "58 psi". What there is none of is "". */
  write: (p: { units: string; range: string; example: string }): string => {
    const units = p.units && ` with ${p.units}`;
    const range = p.range && `, ${p.range}`;
    const example = p.example && `, such as ${p.example}`;
    return `Write a number${units}${range}${example}.`;
  },
};

/** How that locale marks thousands and decimals; see language.ts. */
export const marks = ',.';
