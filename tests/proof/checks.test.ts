/** The proofs that read files, on files that are wrong. */
import { expect, test } from 'vitest';
import { shippedLicences, strangeLicences } from '../../src/proof/licences.ts';
import { lockFaults } from '../../src/proof/lock.ts';
import { writesMarkup } from '../../src/proof/script-scan.ts';
import { benchRows, rowByRow } from '../../src/proof/bench-rows.ts';

// Sinks that the Trusted Types specification of the W3C lists, and those that evaluate text.
test.each([
  'e.innerHTML=x',
  'e["innerHTML"]=x',
  'e.outerHTML=x',
  'e.insertAdjacentHTML("beforeend",x)',
  'f.srcdoc=x',
  'document.write(x)',
  'document.writeln(x)',
  'range.createContextualFragment(x)',
  'new DOMParser().parseFromString(x,"text/html")',
  'eval(x)',
  'new Function(x)',
  'Function(x)',
  'setTimeout("x()",1)',
  '<p dangerouslySetInnerHTML={{__html:x}}/>',
])('%s is found', (script) => {
  expect(writesMarkup(`a();${script};b()`)).toHaveLength(1);
});

test.each([
  'if(f)l||p&&(f.__html==p.__html||f.__html==e.innerHTML)||(e.innerHTML=f.__html)',
  'p&&(e.innerHTML=``)',
  'setTimeout(()=>x(),1)',
  'e.dynamicTypingFunction(t)',
  'retrieval(x)',
  'e.textContent=x',
])('%s is no place where text becomes a page', (script) => {
  expect(writesMarkup(script)).toEqual([]);
});

test('a license that asks for more than to be named is told, and so is a list that is empty', () => {
  const notices =
    'Parts.\n\npreact 10.29.8: MIT\nother 1.0.0: GPL-3.0-only\n\n=====\npreact 10\n=====\n';
  const shipped = shippedLicences(notices);
  expect(shipped).toHaveLength(2);
  expect(strangeLicences(shipped)).toEqual(['other is under GPL-3.0-only.']);
  expect(strangeLicences([])).toHaveLength(1);
});

const sum = `sha512-${'A'.repeat(86)}==`;
test('a lock file tells what came without a sum, from elsewhere, or runs a program', () => {
  const good = { version: '1.0.0', integrity: sum };
  const faults = lockFaults(
    {
      packages: {
        '': {},
        'node_modules/good': good,
        'node_modules/named': {
          ...good,
          resolved: 'https://registry.npmjs.org/named/-/named-1.tgz',
        },
        'node_modules/weak': { version: '1.0.0', integrity: 'sha1-abc=' },
        'node_modules/a/node_modules/git': {
          ...good,
          resolved: 'git+ssh://git@example.com/x.git#abc',
        },
        'node_modules/plain': { ...good, resolved: 'http://registry.npmjs.org/x.tgz' },
        'node_modules/linked': { ...good, link: true },
        'node_modules/runs': { ...good, hasInstallScript: true },
        'node_modules/allowed': { ...good, hasInstallScript: true },
        'node_modules/refused': { ...good, hasInstallScript: true },
      },
    },
    { allowed: true, refused: false },
  );
  expect(faults).toEqual({
    withoutSum: ['weak'],
    fromElsewhere: ['git', 'plain', 'linked'],
    running: ['runs'],
    allowed: ['allowed'],
  });
});

test('figures of a bench are told by kind, with the slowest named', () => {
  const row = (what: string, measured: string, met: boolean) => ({
    what,
    aim: '12 ms',
    measured,
    met,
  });
  const rows = [
    row('fluid: slowest slider', '4.0 ms', true),
    row('engagement: slowest slider', '11.0 ms, least 9.0', true),
    row('fluid: press', '14.0 ms', false),
    row('engagement: press', '9.0 ms', true),
  ];
  expect(
    benchRows('Simulations', 'npm run bench', rows).map(({ value, met }) => [value, met]),
  ).toEqual([
    ['0 of 2: the most is engagement 11.0 ms', true],
    ['1 of 2: fluid 14.0 ms', false],
  ]);
});

test('of many things over a bar the worst are named, and the rest counted', () => {
  const rows = Array.from({ length: 8 }, (_, n) => ({
    what: `sim-${n}: press`,
    aim: '12 ms',
    measured: `${20 + n}.0 ms`,
    met: false,
  }));
  expect(benchRows('Simulations', 'npm run bench', rows).map(({ value }) => value)).toEqual([
    '8 of 8: sim-7 27.0 ms, sim-6 26.0 ms, sim-5 25.0 ms, sim-4 24.0 ms, sim-3 23.0 ms and 3 more',
  ]);
});

test('a row of a bench is told in words for a foreman', () => {
  const rows = [
    { what: 'a log', aim: 'p50 1000 ms', measured: 'p50 737.0 ms, p95 792.0 ms', met: true },
    { what: 'a table', aim: '60 kB', measured: '25.5 kB', met: true },
  ];
  expect(rowByRow('npm run bench -- work', rows).map(({ value, bar }) => [value, bar])).toEqual([
    ['the middle one in 737.0 ms, 95 of 100 in 792.0 ms', 'the middle one in 1000 ms or less'],
    ['25.5 kB', '60 kB or less'],
  ]);
});
