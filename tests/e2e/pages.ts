import { builtPages } from '../../src/build/pages.ts';

/** Every page of the built site, found in dist/. */
export const addresses = builtPages().map(({ address }) => address);
