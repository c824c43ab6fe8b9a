/** A label of two lines is a list of two. */
export const words = {
  title: 'A gauge hooked up',
  gauge: ['*Gauge', 'hung outside the cabin,', 'read without reaching in'],
  hose: ['*Hose', 'tied up, with slack,', 'nothing hot or turning near'],
  tap: ['*Tap', 'cleaned, cool,', 'engine off'],
  box: ['transmission'],
  shaft: ['shaft turns'],
  exhaust: ['*Exhaust, hot'],
  describe:
    'The side of a transmission with a gauge on it. The tap has been cleaned and cooled, and the hose was screwed in with the engine off. The hose is tied up on its way, with slack, and keeps clear of the shaft that turns behind the case and of the hot exhaust below it. The gauge hangs outside the cabin, where it is read without reaching in.',
};
