/** The proofs that read files, on files that are wrong. */
import { expect, test } from 'vitest';
import { shippedLicences, strangeLicences } from '../../src/proof/licences.ts';
import { lockFaults } from '../../src/proof/lock.ts';
import { writesMarkup } from '../../src/proof/script-scan.ts';
import { benchRows } from '../../src/proof/bench-rows.ts';

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
