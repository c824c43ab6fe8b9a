// What the built pages print, held together: one value reads one way, and no page has a number and its rounding.
import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { builtPages } from '../../src/build/pages.ts';
import { numbers } from '../../src/numbers/index.ts';
import { quantityNames } from '../../src/quantity/by-name.ts';
import { printBoth } from '../../src/quantity/print-both.ts';
import {
  contradictedByText,
  contradictions,
  differByRounding,
  printsOn,
} from './printed-amounts.ts';

const pages = builtPages();
const lessons = pages.filter(({ address }) => address.includes('/lessons/'));

/** A page as it is built: amounts in both systems, or once where they read alike. */
const both = (amount: string, si: string, us: string): string =>
  `<span data-amount="${amount}"> <span class="qty u-si">${si}</span> <span class="qty u-us">${us}</span> </span>`;
const page = (address: string, ...html: readonly string[]) => ({
  address,
  html: `<main>${html.join(' and ')}</main>`,
});
const found = (...planted: readonly { address: string; html: string }[]) =>
  contradictions(planted.flatMap(printsOn));

describe('the check finds what is planted', () => {
  test('one value printed in two ways, on two pages', () => {
    expect(
      found(
        page('/a/', both('pressure 172.369', '172 kPa', '25 psi')),
        page('/b/', both('pressure 172.369', '172 kPa', '25.0 psi')),
      ),
    ).toEqual(['The pressure 172.369 reads "25 psi" on /a/ and "25.0 psi" on /b/.']);
  });

  test('two numbers on one page of which one is the other rounded', () => {
    const near = [
      both('pressure 172.369', '172 kPa', '25 psi'),
      both('pressure 170.99', '171 kPa', '24.8 psi'),
    ];
    expect(found(page('/a/', ...near))).toEqual([
      '/a/ prints the pressure "25 psi" and "24.8 psi": take one number, or say why there are two.',
    ]);
    expect(found(page('/a/', near[0] ?? ''), page('/b/', near[1] ?? ''))).toEqual([]);
  });

  test('a number typed beside the one that is printed', () => {
    const print = '<span class="qty" data-amount="seconds 0.3">0.30 s</span>';
    expect(contradictedByText(page('/a/', print, 'It waits 0.3 s.'))).toEqual([
      '/a/ has "0.3 s" in its text, and prints "0.30 s" from the numbers: write it as a number too.',
    ]);
    expect(contradictedByText(page('/a/', print, 'It waits 0.4 s.'))).toEqual([]);
  });

  test('a mark that cannot be read', () => {
    expect(() =>
      printsOn(page('/a/', '<span data-amount="seconds 0.3"><b>0.30 s</b></span>')),
    ).toThrow('/a/ marks 1 amounts, and 0 can be read.');
  });

  test.each([
    ['25 psi', '24.8 psi', true],
    ['25 psi', '25.0 psi', true],
    ['25 psi', '25 kPa', false],
    ['25 psi', '24 psi', false],
    ['25 psi', '24.4 psi', false],
    ['1,200 N', '1200.4 N', true],
    ['−10 °C', '−9.6 °C', true],
    ['10 °C', '−9.6 °C', false],
  ])('%s and %s: %s', (one, other, differ) => {
    expect(differByRounding(one, other)).toBe(differ);
    expect(differByRounding(other, one)).toBe(differ);
  });
});

test('every lesson marks the amounts of its prose and of its questions', () => {
  for (const { address, html } of lessons) {
    const [prose = '', questions = ''] = html.split('class="retrieval-plain"');
    expect(prose, address).toContain('data-amount=');
    if (!address.startsWith('/es/')) expect(questions, address).toContain('data-amount=');
  }
});

test('one value reads one way wherever it is printed, and no page prints a number and its rounding', () => {
  const prints = pages.flatMap(printsOn);
  expect(prints.length).toBeGreaterThan(900);
  expect(contradictions(prints)).toEqual([]);
});

test('what is marked reads as the printer prints that value', () => {
  for (const { page, quantity: name, value, si, us } of pages.flatMap(printsOn)) {
    const quantity = quantityNames.find((known) => known === name);
    if (quantity === undefined) throw new Error(`${page} marks a quantity "${name}".`);
    expect({ si, us, amount: `${name} ${value}` }, page).toEqual(printBoth(value, quantity));
  }
});

test.each(lessons.map((lesson) => [lesson.address, lesson] as const))(
  '%s types no number beside the one that it prints',
  (_, lesson) => {
    expect(contradictedByText(lesson)).toEqual([]);
  },
);

test('every number is printed somewhere, so that none rots', () => {
  const places = ['content', 'src/lessons'].flatMap((folder) =>
    readdirSync(folder, { recursive: true, encoding: 'utf8' })
      .filter((name) => /\.(mdx|json|ts)$/.test(name))
      .map((name) => readFileSync(`${folder}/${name}`, 'utf8')),
  );
  const named = new Set(
    places.flatMap((text) =>
      Array.from(
        text.matchAll(
          /<Num\s+id="([^"]+)"|\{= ([\w-]+)\}|"key":\s*"([^"]+)"|(?<=<Sum of="[^"]*)([a-z][\w-]*)/g,
        ),
        ([, num, quoted, key, inSum]) => num ?? quoted ?? key ?? inSum,
      ),
    ),
  );
  expect([...numbers.keys()].filter((id) => !named.has(id))).toEqual([]);
});
