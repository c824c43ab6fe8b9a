/** The car of the course as it came in, and what it may be after somebody has repaired it, by what is wrong with it. */
export const REPAIRS = ['sound', 'half', 'rings', 'untouched'] as const;
export type Repair = (typeof REPAIRS)[number];

/** Where the customer's complaint comes [°C]: the fluid of a car driven hot in traffic. */
export const COMPLAINT_C = 95;
