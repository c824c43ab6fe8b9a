/** What is said of the size of a crack: fetched with the answers. */
export const words = {
  title: 'How big is the crack',
  map: 'Sizes of the crack that fit',
  mapSays: (p: { low: string; high: string }) =>
    `Nine in ten of what fits these pressures lies in the filled part: open by ${p.low} to ${p.high}. The more pressures, the smaller it gets.`,
  height: 'Open by',
  width: 'Width',
  fits: 'fits',
  fitsNot: 'fits badly',
  ask: 'Work it out from the pressures (half a second)',
  failed: 'That part did not load. Check that you are connected, then load the page again.',
  size: (p: { low: string; middle: string; high: string; widthLow: string; widthHigh: string }) =>
    `It stands open by about ${p.middle} (${p.low} to ${p.high}), and is ${p.widthLow} to ${p.widthHigh} wide.`,
  notApart: (p: { low: string; high: string }) =>
    `These pressures cannot tell a wide thin crack from a short open one: it stands open by ${p.low} to ${p.high}.`,
  loses: (p: { low: string; high: string }) =>
    `Hot, on the commands of idle, it loses ${p.low} to ${p.high}.`,
  helps: {
    forwardColdLoaded:
      'What would tell: forward clutch pressure cold at 1500 rpm, loaded (brake held, five seconds at most).',
    tooThin: 'The crack is too thin for any shop reading to tell them apart.',
  },
};
