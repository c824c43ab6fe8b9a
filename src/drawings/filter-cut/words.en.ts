/** A label of two lines is a list of two; '*' makes a line strong. */
export const words = {
  title: 'Filter and pan, cut open and laid out',
  neck: ['*Neck seal', 'hard or cut: it lets air in'],
  blade: ['*Blade', 'all round the seam'],
  pleats: ['pleats, spread under a light'],
  paper: ['*On white paper'],
  paste: ['paste:', 'wear'],
  flakes: ['black:', 'lining'],
  needles: ['needles:', 'steel'],
  crumbs: ['crumbs:', 'rubber'],
  describe:
    'A filter cut open with a blade along its seam. The upper shell with the neck and the neck seal is lifted off, and the pleats in the lower shell are spread, with what stuck in them. Below it lies what was in the pan, sorted on white paper: gray paste on the magnet, black flakes of lining, bright needles of steel, and crumbs of rubber.',
};
