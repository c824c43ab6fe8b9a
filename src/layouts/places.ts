import { address, language } from '../language/current.ts';
import { exists } from '../language/pages.ts';
import { words } from './words.en.ts';

export interface Place {
  readonly path: string;
  readonly title: string;
}

const all = [
  ['/course/', words.places.course],
  ['/whole-car/', words.places.wholeCar],
  ['/practise/', words.places.practise],
  ['/measure/', words.places.measure],
  ['/model/', words.places.model],
  ['/glossary/', words.places.glossary],
  ['/sources/', words.places.sources],
] as const;

/** What the header names: those of them that this language has. */
export const places: readonly Place[] = all
  .filter(([path]) => exists(language.id, path))
  .map(([path, title]) => ({ path: address(path), title }));
