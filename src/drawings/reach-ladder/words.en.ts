/** From the seat down to the transmission on the bench, in that order. A label of two lines is a list of two. */
export const words = {
  title: 'The ladder of reach',
  rungs: [
    { name: ['*From the seat', 'codes, log, a drive'], minutes: '5 to 45 min' },
    { name: ['*Outside', 'level, look, cable'], minutes: '10 to 30 min' },
    { name: ['*A line opened', 'gauge, cooler return'], minutes: '15 to 60 min' },
    { name: ['*Pan or body off', 'filter, bores, air'], minutes: '35 to 180 min' },
    { name: ['*Transmission out', 'clearances, packs'], minutes: 'a day and more' },
  ],
  first: ['*Not before level, codes, hot log, cable'],
  describe:
    'A ladder that leads from the seat down into the transmission, with what each rung takes as a bar. From the seat come codes, log and a drive, in 5 to 45 minutes. Outside are level, look and cable, in 10 to 30. With a line opened, gauge and cooler return take 15 to 60. With the pan or the body off, filter, bores and air take 35 to 180. With the transmission out, clearances and packs take a day and more. A heavy line crosses the ladder above the pan: not before level, codes, hot log and cable. The minutes are what many shops reckon with, without a source.',
};
