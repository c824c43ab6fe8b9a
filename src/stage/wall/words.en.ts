export const words = {
  title: 'On the wall',
  description:
    'One simulation of a lesson on a projector, at the state that it had in the lesson: full screen, in letters that are read from the last row.',
  loading: 'The stage is loading.',
  failed: 'The stage did not load. Check that you are connected, then load the page again.',
  none: (p: { controls: string; button: string }) =>
    `This address names no simulation. In a lesson, go through a simulation to “${p.controls}”, set it the way you want it, and press “${p.button}”.`,
  noScript: 'The stage needs a script.',
  back: 'All shop meetings',
  scene: 'Watch this',
  /** For whoever has the notes in a second window. */
  asItCame: 'As it came from the lesson:',
};
