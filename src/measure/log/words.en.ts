/** What stands on the page before a log is read. What is said of one is in result-words.en.ts. */
export const words = {
  choose: 'Choose a log file',
  chooseHow:
    'A table of readings as text, one row for each moment: comma, semicolon or tab between the columns. Whatever tool wrote it, you say which column is what.',
  stays:
    'The file is read on this device and is not uploaded. The site remembers which column is what for this kind of file, and none of its readings.',
  examples: 'Or try one of these',
  examplesHow:
    'Three logs made up for practice, from the training transmission and three different tools.',
  example: {
    'practice-1': 'A healthy car, cold and hot',
    'practice-2': 'Slips in Drive and Reverse once hot',
    'practice-3': 'Stored a code, drives like new',
  },
  exampleNotFetched: 'The example did not arrive. Check the connection and press again.',
  noScript: 'Reading a log takes JavaScript, which is off or has not loaded.',
  reading: (name: string) => `Reading ${name}`,
  readSoFar: (share: string) => `${share} read`,
  cancel: 'Cancel',
  cancelled: (name: string) =>
    `You stopped the reading of ${name}. Choose it again, or another one.`,
  failed: (name: string) =>
    `${name} could not be read: the browser stopped the work. It may be short of memory. Close other pages and choose the file again, or a shorter piece of it.`,
  refused: {
    empty: (name: string) =>
      `${name} is empty. Export the log again, and look at its size before you copy it.`,
    picture: (name: string) =>
      `${name} is a picture. Numbers cannot be read out of a picture here: export the log from the tool as CSV or text.`,
    pdf: (name: string) =>
      `${name} is a PDF, a printed page. Export the log from the tool as CSV or text.`,
    archive: (name: string) =>
      `${name} is packed, or a spreadsheet’s own file. Unpack it, or open it in the spreadsheet and save it as CSV.`,
    json: (name: string) =>
      `${name} is JSON, not a table. This page reads rows of readings with a comma, semicolon or tab between them.`,
    markup: (name: string) =>
      `${name} is a web page or a drawing, not a table. Export the log from the tool as CSV or text.`,
    binary: (name: string) =>
      `${name} is not text. Many tools keep a log in a form of their own: look for an export to CSV or text.`,
    noTable: (name: string) =>
      `No table of readings was found in ${name}. There have to be rows with two or more numbers each, and a comma, semicolon or tab between them.`,
    tooLarge: (name: string, rows: string, most: string) =>
      `${name} has more than ${rows} rows. Up to ${most} are read at once: cut out the stretch that matters.`,
  },
};
