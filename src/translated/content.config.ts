export { collections } from '../content.config.ts';
