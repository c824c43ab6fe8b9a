/** What asks and grades, without a view. */
export { gradedAgain, isBlank, standingOf } from '../../quiz/rehearsal/standing.ts';
export { resultOf } from '../../quiz/result.ts';
export { answer } from '../../quiz/session.ts';
export { retrievalModel } from '../../widgets/retrieval/model.ts';
export { loadSets } from '../load-sets.ts';
export { askedIn } from './asked-in.ts';
