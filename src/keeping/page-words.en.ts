/** The text of the page round what a device keeps: built into the page, never sent to a script. */
export const words = {
  title: 'Keep and move',
  description:
    'Save everything you have done here to one file, take it in on another phone after looking at what would change, or delete it all from this device.',
  lead: 'What you have answered and taken down lies in this browser and nowhere else. A file is how it gets to another phone, to your foreman, or to a safe place.',
  why: 'Browsers clear what they keep when room gets short, and some clear it after a few weeks without a visit. So save a file now and then, and always before you change phones.',
  noScript:
    'This page needs a script, because what you have done lies in this browser and nowhere else.',
};
