export const words = {
  tasks: {
    bothCracks: {
      words: (p: { crack25: string }) =>
        `These limits are slack: the crack of ${p.crack25} never stores its code. Set slip limit and time so that both big cracks store a code and every healthy recording passes.`,
      hint: 'A code takes two failed ratio checks, one after the other. Shorten the time first, and look at the driver in a hurry before you go too far.',
      after: (p: { longestOver: string }) =>
        `There is room between the cracks and the healthy cars. A healthy clutch slips ${p.longestOver} at the longest, while it fills with the throttle already open. The time has to be longer than that. The rest is choice, and makers choose differently.`,
    },
    friction: {
      words:
        'Worn friction is missed: its turbine stops late, but it stops. Look earlier. Catch it with the engagement check and let every healthy recording pass.',
      hint: 'Read in the picture when the slip of the worn clutch drops. Then switch to the healthy one in the frost and read it there.',
      after: (p: { frost: string; friction: string }) =>
        `The slowest healthy turbine stands ${p.frost} after selection, the worn one after ${p.friction}. The check must look between the two. A log gives you the same two numbers: note the stopping time of a car you know is good, at the same fluid temperature.`,
    },
    price: {
      words: (p: { crack16: string }) =>
        `The thin crack, ${p.crack16}, is still missed. Look earlier yet, until it is caught. Then see what else fails a check.`,
      hint: 'Go down in small steps and watch the counts under the picture. Which car it is stands in the table further down.',
      after: (p: { thin: string; frost: string }) =>
        `You cannot have both. With the thin crack the turbine stands after ${p.thin}, with a healthy clutch on a frosty morning after ${p.frost}, so no time limit can tell them apart. A controller without a false alarm lets small leaks drive on. That is why no code does not mean no fault.`,
    },
    noise: {
      words:
        'Usual limits, a healthy hot car. Worsen the noise of the turbine sensor until this car fails a check. Which check is fooled?',
      hint: 'Noise below a limit cannot cross it.',
      after: (p: { limit: string; readings: string }) =>
        `The engagement check takes one look, and one bad reading over ${p.limit} is enough. The ratio check wants ${p.readings} readings in a row over its limit, so noise alone hardly gets through. Sensor, tone wheel and wiring come before the clutch when a log looks like this.`,
    },
  },
  reached: {
    noCode: (p: { recording: string }) => `No code: ${p.recording}.`,
    allRight: 'Both cracks store a code and every healthy recording passes.',
  },
};
