export const words = {
  table: {
    head: 'Who could have written these rows?',
    caption: 'Each car was tried with Drive selected at every moment between two rows.',
    car: 'Car',
    stands: 'Stands after',
    rows: 'Same rows?',
    yes: 'yes',
    no: 'no',
    never: 'not with the foot on the brake',
  },
  taken: {
    head: 'What is taken for granted.',
    queue:
      'All items of a row are read at one moment here. On a real line they take turns, so two of them can be as far apart as a whole row is long.',
    stands: (p: { speed: string }) =>
      `"Stands" means slower than ${p.speed}, as in the log reader. Readings that a screen would show alike count as the same.`,
    hand: (p: { lasts: string; swings: string; speed: string }) =>
      `The engine of this site has solved six of these cars. A contact that opens for ${p.lasts}, and a shudder of ${p.swings} swings a second by ${p.speed} either way, were drawn by hand over the healthy car.`,
    ramp: (p: { falls: string }) =>
      `Our turbine is pulled down within ${p.falls}, since the model raises pressure at once. In a real car that would feel like a bang. Controllers ramp the pressure, and 0.2 to 0.6 s is usual (common practice, no source).`,
  },
};
