export const words = {
  tasks: {
    on: {
      words:
        'The drums are in, and their air test stands on the card. A colleague is holding the valve body ready. Sign what is left until the pan is on.',
      hint: 'Try “Valve body on” first, and read why it is refused.',
      after: (p: { orders: string }) =>
        `Two lines were still open, and the body hides both. All in all the card lets ${p.orders} orders through. The rings may come before the lip, and the balls go in at any time between cleaning and the body. Everything else has one place.`,
    },
    forward: {
      words:
        'This card is signed from top to bottom, and somebody signed without looking. Cold the car pulls. Hot it slips in Drive, and Reverse has its pressure. Take back one line that explains it.',
      hint: 'Hot alone, so look for a gap. One range alone, so look where Drive is by itself.',
      after: (p: { lip: string; ring: string; sister: string }) =>
        `A nicked lip does it, and so does a wide ring gap. Air would have told either: the forward circuit holds ${p.lip} with that lip and ${p.ring} with that ring, beside ${p.sister} in its sister. So the air line was signed without its sister as well.`,
    },
    silent: {
      words:
        'This one pulls cold and hot, and both taps are right. A week later it is back, foaming out of its vent. Take back the one line that did it.',
      hint: 'No gauge shows it. What else is read on a car that stands?',
      after: (p: { over: string; window: string }) =>
        `Filled cold to MAX and left there, it stands ${p.over} over the middle at ${p.window}, and the gears whip air into it. The model leaves out what the foam does to the clutches. The stick in its window is the only reading here that shows it.`,
    },
  },
  reached: {
    hidden: (p: { steps: string }) => `Hidden without its proof: ${p.steps}.`,
    pan: 'The body is on. Behind it the pan is still off.',
    many: 'That is more than one line. Sign all of them but one again.',
    coldToo: 'With that one it would slip cold as well.',
    reverseToo: 'With that one Reverse has lost its pressure too.',
    right: 'With that one both taps are right, cold and hot.',
    slips: 'With that one it would slip hot.',
    stick: 'With that one the stick is right as well.',
  },
};
