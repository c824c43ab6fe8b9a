/**
 * Everything after the prediction, as one chunk that `use-later-stages.ts` loads when somebody
 * first takes hold of a simulation. Who only reads the lesson does not pay for it.
 */
export { Compare } from './Compare.tsx';
export { OwnControls } from './OwnControls.tsx';
export { arrive } from './arrive.ts';
export { askToRun } from './asked-to-run.ts';
export { KeepPlace } from './place.ts';
export { stateWords } from './state-words.ts';
export { Task } from './Task.tsx';
