/** Names that a drawing prints as well, which knows nothing else of a car: apart from the rest for its sake. */
export const words = {
  circuits: { forward: 'Forward', reverse: 'Reverse', high: 'High' },
  /** By the letters beside the lever. */
  ranges: { park: 'Park', reverse: 'Reverse', neutral: 'Neutral', drive: 'Drive' },
};
