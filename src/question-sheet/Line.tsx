/** To write on. */
export const Line = ({ short = false }: { readonly short?: boolean }) => (
  <span class={short ? 'paper-line paper-short' : 'paper-line'} />
);
