export const words = {
  tasks: {
    quick: {
      words: (p: { crack: string; goesAt: string; gentle: string; spare: string }) =>
        `The crack of this course, ${p.crack}, loses a gentle take-off at ${p.goesAt}. Driven gently it takes ${p.gentle} to show. You have ${p.spare}. Change how the drive begins so that it shows in time.`,
      hint: 'What puts the most heat into the fluid? A converter that slips under load.',
      after: (p: { fast: string; gentle: string; tooHot: string }) =>
        `${p.fast} of stop-and-go pulling do what gentle driving needs ${p.gentle} for. Take hills, stops and starts, and watch the temperature reading as you go: above ${p.tooHot} you are cooking fluid, not testing (common practice, no source). Do it on the road, not against the brake, and let somebody else read while you drive.`,
    },
    winter: {
      words: (p: { drive: string; near: string }) =>
        `A test drive of ${p.drive}, stop and go. Find the coldest day on which it still shows the fault, to ${p.near}.`,
      hint: 'Go down until it no longer shows, then back up a little.',
      after: (p: { frost: string; frostEnd: string }) =>
        `Below that the same car passes the same drive. At ${p.frost} the fluid is no warmer than ${p.frostEnd} when you turn back into the yard. “Could not find it” in winter says something about the drive, not about the car. Write down how warm the fluid got.`,
    },
    idle: {
      words: (p: { outside: string; crack: string }) =>
        `Left idling in the yard for an hour at ${p.outside}, the fluid never gets to where the crack of ${p.crack} lets go. Find the narrowest crack that an hour of idling does show.`,
      hint: 'A wider crack lets go cooler. Open it a step at a time.',
      after: (p: { yardEnd: string }) =>
        `Idling gets this fluid to ${p.yardEnd} and no further: the engine’s coolant warms it up to there and then holds it there. A crack that lets go hotter than that never shows in the yard. The fault that costs a shop most is that narrow one, and it needs a road.`,
    },
    lunch: {
      words: (p: { customer: string; yours: string }) =>
        `The customer’s car slips after ${p.customer}. You drive it for ${p.yours} and nothing happens. Same car, same day, same road. Change how warm the fluid starts until it shows within ${p.customer}.`,
      hint: 'Where does the customer come from when the ten minutes begin?',
      after:
        'The customer had driven to work and stopped for lunch; the fluid was still warm. Your car stood overnight. Ask what the car did in the hour before it slipped, not only in the minutes.',
    },
  },
  reached: {
    after: (p: { minutes: string }) => `It shows after ${p.minutes}.`,
    ends: (p: { temp: string; goesAt: string }) =>
      `This drive ends at ${p.temp}; it lets go at ${p.goesAt}.`,
    shows: (p: { outside: string }) => `At ${p.outside} it still shows.`,
    hides: (p: { outside: string }) => `At ${p.outside} it does not show any more.`,
    crack: (p: { crack: string; goesAt: string }) => `With ${p.crack} it lets go at ${p.goesAt}.`,
  },
};
