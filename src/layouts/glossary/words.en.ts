/** What the glossary says while it is narrowed to what is typed. */
export const words = {
  left: (p: { left: string; all: string }) => `${p.left} of ${p.all} terms.`,
  all: (all: string) => `All ${all} terms.`,
  none: (typed: string) => `No term here goes by “${typed}”.`,
};
