/** What the shell says up to the end of the run. What comes after stands in `later`, and loads with it. */
export const words = {
  howSure: 'How sure are you?',
  confidence: { guessing: 'Guessing', 'fairly-sure': 'Fairly sure', certain: 'Certain' },
  notYet: {
    both: 'First say what you expect, and how sure you are.',
    prediction: 'First say what you expect.',
    confidence: 'Now say how sure you are.',
  },
  running: 'Running',
  watch: 'Watch the picture.',
  predictFirst: 'Predict first',
  predictAgain: 'Predict again',
  tasks: 'Tasks',
  ownControls: 'Your controls',
  loading: { controls: 'Loading the controls.', pictures: 'Loading the pictures.' },
  failed: {
    controls: 'Could not load the controls. Check that you are connected, then try again.',
    pictures: 'Could not load the pictures. Check that you are connected, then try again.',
  },
  reload: 'Load the page again',
};
