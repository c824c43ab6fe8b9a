/** A label of two lines is a list of two. */
export const words = {
  title: 'The record that convinces',
  photo: ['*The part beside a scale'],
  split: ['split, held open'],
  job: ['job no.'],
  traces: ['*The same test, on one axis'],
  before: ['before, hot'],
  after: ['after, as hot'],
  selected: ['Drive selected'],
  sheet: ['*The sheet'],
  columns: { before: 'before', after: 'after' },
  rows: ['degrees', 'command / pressure', 'engine speed', 'list and rate', 'who and when'],
  describe:
    'Three things that belong together. A photo of the old seal beside a scale, its split held open, with the number of the job in the picture. Two traces of turbine speed on the same axis, from the moment Drive was selected: before the repair it climbs again, after it, at the same temperature, it falls and stays down. And the sheet with two columns, before and after: degrees, command beside pressure, engine speed, the list of the log and its rate. Who and when stand on it, so that somebody who was not there can ask.',
};
