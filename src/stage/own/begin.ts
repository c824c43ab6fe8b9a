/** Everything that is fetched to start a meeting of one's own, or to name what it shows. */
export { Stage } from '../Stage.tsx';
export { questionsFor } from './load-questions.ts';
export { nameState } from './name-scene.ts';
