/** Everything that is fetched to start a meeting of one's own. */
export { Stage } from '../Stage.tsx';
export { questionsFor } from './load-questions.ts';
