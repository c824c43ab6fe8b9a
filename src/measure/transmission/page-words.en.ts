/** The text of the page round the sheets: built into the page, never sent to a script. */
export const words = {
  title: 'Your transmission',
  description:
    'Enter a sheet of your own transmission from the maker’s data: ratios, apply chart, pressures, clutches. The planner then reasons from your numbers.',
  lead: 'Type what the maker’s service information says of the transmission on your lift. What you do not know stays as on the training transmission, and is marked as assumed.',
  caution:
    'It is still a model: it knows your numbers, not your transmission. Where it and the maker’s service information differ, the maker is right.',
};
