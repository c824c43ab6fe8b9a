/** In drawings of every kind. */
export const words = { holds: 'holds', slips: 'slips' };
