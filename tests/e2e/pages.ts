import { builtPages, simulationsIn } from '../../src/build/pages.ts';
import { languageAt, source } from '../../src/language/languages.ts';

const pages = builtPages();

/** Every page of the built site, found in dist/. */
export const addresses = pages.map(({ address }) => address);

/** Every English page that holds a simulation, with the ids of those it holds. */
export const simulationPages = pages.flatMap(({ address, html }) => {
  if (languageAt(address).id !== source) return [];
  const ids = simulationsIn(html);
  return ids.length === 0 ? [] : [{ address, ids }];
});
