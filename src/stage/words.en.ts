/** Of the stage, fetched when a meeting is started. */
export const words = {
  stage: (title: string) => `Meeting: ${title}`,
  progress: (p: { scene: string; of: string }) => `${p.scene} of ${p.of}`,
  next: 'Next',
  back: 'Back',
  leave: 'Leave',
  full: 'Full screen',
  notFull: 'This browser does not go full screen. F11 may do it.',
  blank: 'Blank',
  blanked: 'Blank. Any step, or B, brings the scene back.',
  /** At the foot, for whoever has a keyboard. */
  hint: 'F full screen, arrow keys step, B blanks, ? shows all keys.',
  code: 'Code for phones',
  keys: 'Keys',
  more: 'More',
  close: 'Close',
  notes: 'Open the notes in a second window',
  blocked:
    'The browser blocked the second window. Allow pop-ups for this site, then press the button again. The notes are also on the page of the meeting, to print.',
  clock: {
    left: (text: string) => `${text} left`,
    over: (text: string) => `${text} over`,
    paused: (text: string) => `${text}, paused`,
    pause: 'Pause the clock',
    go: 'Start the clock',
    restart: 'Set the clock back',
    hide: 'Hide the clock',
    show: 'Show the clock',
  },
  vote: {
    hands: (option: string) => `Hands for ${option}`,
    add: (option: string) => `One more hand for ${option}`,
    take: (option: string) => `One hand less for ${option}`,
    how: 'Count hands.',
    /** For whoever has a keyboard. */
    keys: (last: string) =>
      `Keys 1 ${last === '2' ? 'and' : 'to'} ${last} add one, with Shift they take one back.`,
    wrong: (most: string) => `Hands are a whole number from 0 to ${most}.`,
    total: (count: string): string => (count === '1' ? '1 hand' : `${count} hands`),
    none: 'No hands counted.',
    right: 'Right',
    asTable: 'The chart in numbers',
  },
  simulation: {
    loading: 'The simulation is loading.',
    failed:
      'The simulation did not load. Go on with the next scene, or load the page again; it opens where it stands.',
    unknown: 'This simulation is no longer on the site under that name. Go on with the next scene.',
  },
  car: {
    week: 'This week’s car: the same for every shop until Sunday night.',
    open: 'The next press opens the car.',
    loading: 'The car is loading.',
    failed: 'The car did not load. Go on with the next scene, or load the page again.',
    parts: 'Parts of the car',
    part: { talk: 'Ask', looks: 'Look', measure: 'Measure', conclude: 'What is it?' },
  },
  qr: {
    title: 'Point a phone at it',
    what: 'It opens what stands on the wall now.',
    lesson: 'It opens the lesson that the question comes from.',
    picture: (address: string) => `Code with the address ${address}`,
    local:
      'This page is served from this computer alone, so phones cannot reach it. Serve the site in the shop’s network, or open it from the internet, and the code works.',
    none: 'This scene has no code. To share the whole meeting, leave it and press Copy a link to it.',
    tooLong: 'This state is too long for a code that a phone can read across the room.',
  },
  keyList: {
    title: 'Keys',
    rows: [
      ['→ ↓ Page Down, space', 'Next'],
      ['← ↑ Page Up', 'Back'],
      ['Home, End', 'First scene, last scene'],
      ['1 to 5', 'One more hand; with Shift one less'],
      ['B or .', 'Blank the wall'],
      ['P', 'Pause or start the clock'],
      ['R', 'Set the clock back to the full time'],
      ['T', 'Hide or show the clock'],
      ['F', 'Full screen'],
      ['Q', 'Code for phones'],
      ['N', 'Notes in a second window'],
      ['?', 'This list'],
      ['Esc', 'Close, or leave the meeting'],
    ] as readonly (readonly [string, string])[],
    inside:
      'With the focus on a control of a simulation the arrows move that control; Page Up and Page Down still step.',
  },
};
