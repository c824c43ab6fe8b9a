/** What is fetched once somebody asks for a sheet. */
export { draw } from './draw.ts';
export { Made } from './Made.tsx';
