/** The text of the page round the job sheets: built into the page, never sent to a script. */
export const words = {
  title: 'Job sheets',
  description:
    'Keep the readings of each car on your device: what still fits, which test next, before and after the repair, and two pages to print.',
  lead: 'A sheet for each car. Type what you read, see what still fits and what to measure next, and print a page for the file and one for the customer.',
  caution:
    'It reasons about the training transmission, which is invented, or about a sheet that you entered yourself: never about the car on your lift. The maker’s service information and your local rules come first.',
};
