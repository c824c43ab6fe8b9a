/** What is said to a range where one number is asked. */
export const words = {
  aRange: (text: string) => `“${text}” is a range, and one number is asked for here.`,
  middle: (middle: string) => `Its middle is ${middle}.`,
};
