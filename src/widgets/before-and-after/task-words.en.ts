export const words = {
  tasks: {
    second: {
      words: (p: { hot: string; cold: string }) =>
        `Car A was read at ${p.hot} before. After the repair somebody read it in the shop at ${p.cold} and wrote "OK". Make the second reading one that counts.`,
      hint: 'Warm it until the two temperatures make one test. The first one cannot be taken again.',
      after: (p: { same: string; hot: string }) =>
        `Within ${p.same} it is the same test. That is why the first one is taken with care and written down with its degrees: once the seal is out, nobody can go back for it.`,
    },
    fooled: {
      words: () =>
        'Nobody has opened car D. Make it look repaired: the second reading must be better than the first by more than the doubt. Move the temperatures alone.',
      hint: 'What does a thin crack lose when the fluid is thick?',
      after: (p: { hot: string; cold: string; was: string; is: string }) =>
        `From ${p.hot} to ${p.cold} the same crack goes from ${p.was} to ${p.is}. Better than before, by far, and nothing was done. The customer drives off, and it comes back hot.`,
    },
    halfCured: {
      words: (p: { hot: string; stop: string; sound: string }) =>
        `Car B, both times at ${p.hot}. Before, the turbine never stopped. Now it takes ${p.stop}, where a healthy car takes ${p.sound}, and by a stop time that cannot be told from right. Find a test that shows whether something is left.`,
      hint: 'A stop time is read to a good tenth of a second. What is read finer, and behind the seal?',
      after: (p: { left: string; right: string; room: string }) =>
        `At idle the tap has ${p.left} in place of ${p.right}, give or take ${p.room}. The new seal was cut going in, and half of the old gap is there again. One test right is not the whole list right.`,
    },
  },
  reached: {
    apart: (p: { apart: string; same: string }) =>
      `The two are ${p.apart} apart; ${p.same} is allowed.`,
    change: (p: { from: string; to: string; doubt: string }) =>
      `From ${p.from} to ${p.to}. It has to gain more than ${p.doubt}.`,
    shows: (p: { is: string; right: string }) =>
      `It reads ${p.is}, where a healthy car reads ${p.right}.`,
    blind: (p: { is: string }) =>
      `${p.is}, as on a healthy car: this test shows nothing of what is left.`,
  },
};
