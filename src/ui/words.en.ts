export const words = {
  table: 'The numbers',
  points: (shown: string, all: string) => `(${shown} of ${all} points)`,
};
