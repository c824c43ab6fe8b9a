export const words = {
  table: {
    head: 'One more on the shelf.',
    caption: 'What each one brings, with the use and the wait as they stand.',
    keep: 'Keep',
    found: 'Of 100 find it',
    wait: 'A year wait',
    lying: 'Money lying there',
  },
  columns: {
    head: 'The columns as numbers.',
    caption:
      'Of 100 orders, how often so many are used before one comes, and what the next car finds.',
    used: 'Used',
    often: 'Of 100 orders',
    next: 'The next car',
    found: 'finds one',
    waits: 'waits',
  },
  taken: {
    head: 'What is taken for granted.',
    law: 'Cars come each by itself, at no set time, as calls to a switchboard do; what is used before the order comes then follows what is called the Poisson law. Whenever one is used one is ordered, so the order goes out when the shelf is one under what you keep. It is a published result (Feeney and Sherbrooke, 1966) that the chance of finding one depends on the mean wait alone, and not on how much waits differ.',
    left: 'Two seals for one car, quantity discounts, a season and parts that age on the shelf are left out. Rubber has a shelf life: take the oldest first. A car that finds none waits; it does not go elsewhere. Use, wait and prices that stand here at first are invented.',
  },
};
