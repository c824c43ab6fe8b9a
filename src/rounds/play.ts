/** What asks the questions: fetched when somebody begins, so that who only looks what is due does not pay for it. */
export { retrievalModel } from '../widgets/retrieval/model.ts';
export { Asking } from './Asking.tsx';
export { loadSets } from './load-sets.ts';
