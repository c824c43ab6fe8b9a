/** What asks, grades and tells: fetched when somebody begins, so that who only looks does not pay for it. */
export { isBlank, gradedAgain, standingOf } from '../../quiz/rehearsal/standing.ts';
export { resultOf } from '../../quiz/result.ts';
export { answer } from '../../quiz/session.ts';
export { retrievalModel } from '../../widgets/retrieval/model.ts';
export { loadSets } from '../load-sets.ts';
export { Asking } from './Asking.tsx';
export { headOf } from './head-of.ts';
export { Overview } from './Overview.tsx';
export { Result } from './Result.tsx';
