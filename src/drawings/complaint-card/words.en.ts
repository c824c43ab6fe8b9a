/** What is asked, and what the answer splits, in the order of a good intake. A label of two lines is a list of two. */
export const words = {
  title: 'The complaint card',
  head: ['*Complaint, in their words'],
  rows: [
    { asks: ['Which ranges?'], splits: ['Where: one circuit,', 'or what they share'] },
    { asks: ['Worse cold', 'or hot?'], splits: ['What: a gap, a hard', 'lip, or neither'] },
    { asks: ['Minutes, and', 'what road?'], splits: ['Both together: how', 'warm the fluid was'] },
    {
      asks: ['How long had', 'it stood?'],
      splits: ['By hours, not by heat:', 'fluid drained back'],
    },
    {
      asks: ['Does a restart', 'cure it?'],
      splits: ['A yes: electrics, or a', 'controller that gave up'],
    },
    { asks: ['Sudden? What', 'was done last?'], splits: ['Since a job: that', 'job, before wear'] },
  ],
  describe:
    'A job card with six questions, and at each an arrow to what its answer splits. Which ranges says where to look. Cold or hot says what kind of fault. Minutes and road together say how warm the fluid was. Hours of standing point to fluid that has drained back. A restart that cures it points to electrics, or to a controller that gave up. A complaint that began with a job points to that job.',
};
