/** Of what a simulation loads once it is used: its controls, links to a state, the way back. */
export const words = {
  /** Names of buttons and fields, after the name of what they set. */
  less: (label: string) => `${label}: less`,
  more: (label: string) => `${label}: more`,
  type: (label: string) => `${label}, type a value`,
  typeIn: (label: string, unit: string) => `${label}, type a value in ${unit}`,
  switched: (label: string) => `${label}:`,
  reset: 'Back to the start',
  copy: 'Copy a link to this state',
  byHand: 'Copy this by hand',
  copied: 'Link copied.',
  notKept: {
    full: 'Your answer counts here, but it could not be kept for practice: this browser has no room left.',
    blocked:
      'Your answer counts here, but it could not be kept for practice: this browser keeps nothing for this site.',
    newer:
      'Your answer counts here, but it could not be kept for practice: a newer version of this site has been here, so reload the page before the next one.',
    busy: 'Your answer counts here, but it could not be kept for practice: another tab of this site holds your answers, so close it before the next one.',
    unloaded:
      'Your answer counts here, but it could not be kept for practice: the part that keeps answers did not load, so reload the page once you are connected.',
    failed:
      'Your answer counts here, but it could not be kept for practice: this browser reported a fault in what it stores.',
  },
  link: {
    noNumber: (label: string, start: string, min: string, max: string) =>
      `${label}: the link gave no number, so it starts at ${start}. Allowed: ${min} to ${max}.`,
    tooLarge: 'too large a number',
    outside: (label: string, asked: string, set: string, min: string, max: string) =>
      `${label}: the link asked for ${asked}. It is set to ${set}; the range is ${min} to ${max}.`,
    noChoice: (label: string) =>
      `${label}: the link named a choice that is not offered. The usual one is set.`,
    tooLong: (most: string) =>
      `The link is longer than ${most} characters. The usual values are set.`,
    otherVersion: 'The link comes from another version of this page. The usual values are set.',
    partLeftOut: 'Part of the link was not understood and is left out.',
  },
};
