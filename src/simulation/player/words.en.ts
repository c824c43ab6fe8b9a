export const words = {
  before: 'Event before',
  play: 'Play',
  slowly: 'Slowly',
  stop: 'Stop here',
  next: 'Next event',
};
