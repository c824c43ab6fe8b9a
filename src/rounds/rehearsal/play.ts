/** What asks, grades and tells: fetched when somebody begins, so that who only looks does not pay for it. */
export * from './script.ts';
export { Asking } from './Asking.tsx';
export { headOf } from './head-of.ts';
export { Overview } from './Overview.tsx';
export { Result } from './Result.tsx';
