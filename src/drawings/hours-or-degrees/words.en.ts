export const words = {
  title: 'By hours, or by degrees',
  /** Two cars with the same complaint: three starts each, how long Drive took, and what that points to. */
  cars: [
    {
      head: ['*By hours'],
      waits: ['after a night', 'soon after, still as cold', 'after a night indoors'],
      points: ['~fluid drained back:', '~a check valve'],
    },
    {
      head: ['*By degrees'],
      waits: ['after a night', 'soon after, still as cold', 'after a night indoors'],
      points: ['~a hard lip in one range;', '~level, filter, frost in all'],
    },
  ],
  wait: 'how long Drive takes',
  describe:
    'Two cars, both late on a frosty morning. Each has three bars for how long Drive takes. The first car waits long after a night in the frost, is on time a few minutes later at the same cold, and waits long again after a night in a warm garage. It goes by hours: fluid drained back. The second car waits long after the night and again a few minutes later, and is on time after a night in a warm garage. It goes by degrees: a hard lip if it is one range; level, filter or frost itself if it is all of them. The lengths are not measured.',
};
