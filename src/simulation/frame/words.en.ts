/** What stands at a simulation that cannot run, and on paper; apart, since nobody loads it as script. */
export const words = {
  noScript:
    'This simulation needs JavaScript, and that is off here. The picture shows where it starts. Everything it teaches stands in the text as well.',
  asleep:
    'This simulation is not awake: its script has not arrived. Reload the page once you are connected. Until then the picture shows where it starts.',
  onPaper:
    'A simulation, printed as it stood. To move it, open the address at the top of this page.',
  ran: 'What the run came to:',
  given: (p: { label: string; value: string }) =>
    p.label.endsWith('?') ? `${p.label} ${p.value}` : `${p.label}: ${p.value}`,
  runWith: (givens: string) =>
    givens.endsWith('.') ? `Run with ${givens}` : `Run with ${givens}.`,
  ranOnPaper:
    'A simulation, printed at the end of its run. Run it before you print, and your own result stands here. To move it, open the address at the top of this page.',
};
