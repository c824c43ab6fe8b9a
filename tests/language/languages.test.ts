import { expect, test } from 'vitest';
import { languageAt, languageOf, languages } from '../../src/language/languages.ts';
import { linkedParts } from '../../src/language/links.ts';
import { exists, reach, twinsOf } from '../../src/language/pages.ts';

test('a build without a wish is English, and a wish that cannot be met is refused in a sentence', () => {
  expect(languageOf(undefined).id).toBe('en');
  expect(languageOf('').id).toBe('en');
  expect(languageOf('es').base).toBe('/es/');
  expect(() => languageOf('fr')).toThrow(
    'SITE_LANGUAGE is "fr". src/language/languages.ts has: en, es.',
  );
  expect(() => languageOf('toString')).toThrow('SITE_LANGUAGE is "toString"');
});

test('each language has tags that Intl knows, and pages that begin and end in one place', () => {
  for (const { id, locale, base } of Object.values(languages)) {
    expect(new Intl.Locale(locale).language).toBe(id);
    expect(Intl.PluralRules.supportedLocalesOf([locale])).toEqual([locale]);
    expect(base).toMatch(id === 'en' ? /^\/$/ : new RegExp(`^/${id}/$`));
  }
});

test('an address tells its language', () => {
  expect(languageAt('/es/lessons/x/')).toEqual({ id: 'es', path: '/lessons/x/' });
  expect(languageAt('/es/')).toEqual({ id: 'es', path: '/' });
  expect(languageAt('/essays/')).toEqual({ id: 'en', path: '/essays/' });
});

test('twins are pages that exist in more than one language', () => {
  const lesson = '/lessons/hot-fluid-thin-fluid/';
  expect(twinsOf(lesson)).toEqual(twinsOf(`/es${lesson}`));
  expect(twinsOf(lesson).map(({ href }) => href)).toEqual([lesson, `/es${lesson}`]);
  expect(twinsOf('/')).toHaveLength(2);
  expect(twinsOf('/sources/')).toEqual([]);
  expect(exists('es', '/lessons/no-such-lesson/')).toBe(false);
});

test('a link stays in the language of the build', () => {
  expect(reach('/glossary/#slip')).toEqual({ href: '/glossary/#slip' });
});

test('a sentence is taken apart at its links', () => {
  expect(linkedParts('[The course](course) has all, [the glossary](glossary) too.')).toEqual([
    { text: 'The course', to: 'course' },
    { text: ' has all, ' },
    { text: 'the glossary', to: 'glossary' },
    { text: ' too.' },
  ]);
  expect(linkedParts('No link (here).')).toEqual([{ text: 'No link (here).' }]);
});
