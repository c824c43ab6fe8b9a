import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { LONGEST_LINK, printOwnLink, readOwnLink } from '../../src/meeting/own-link.ts';
import type { OwnPlan } from '../../src/storage/meetings/own-meeting.ts';

const PAGE = 'https://example.org/meetings/own/';
const plan: OwnPlan = {
  title: 'Hard rubber, ≤ 5 °C',
  minutes: 8,
  scenes: [
    { kind: 'say', heading: 'Señor Núñez’s van', lines: ['It waits “two seconds”.'], notes: '' },
    {
      ...{ kind: 'vote', heading: 'Hands', stem: 'Which?', options: ['a', 'b'], right: 1 },
      ...{ why: 'So.', notes: 'n' },
    },
    {
      kind: 'question',
      heading: 'Q',
      lesson: 'parts-that-seal',
      id: 'ring-with-a-wide-joint',
      notes: '',
    },
    { kind: 'simulation', heading: 'S', href: '/lessons/x/?y=1~t.2#y', notes: '' },
    { kind: 'case', heading: 'C', search: '?case=stuck-in-third', notes: '' },
  ],
};
const hashOf = (link: string): string => new URL(link).hash;

describe('a meeting in a link', () => {
  test('comes back as it went, whatever letters are in it', () => {
    const link = printOwnLink(PAGE, plan) ?? '';
    expect(link.length).toBeLessThanOrEqual(LONGEST_LINK);
    // Unreserved characters of RFC 3986, section 2.3, and what begins the fragment: no program escapes them.
    expect(link.slice(PAGE.length)).toMatch(/^#meeting=2\.[\w.~-]+$/);
    expect(readOwnLink(hashOf(link))).toEqual({ ok: true, plan });
  });

  test('one of the first version opens, with its one explanation, and one of today explains each option', () => {
    const old = hashOf(printOwnLink(PAGE, plan) ?? '').replace('=2.', '=1.');
    expect(readOwnLink(old)).toEqual({ ok: true, plan });
    const vote = { ...plan.scenes[1], why: ['Not so.', 'So.'] } as OwnPlan['scenes'][number];
    const now = { ...plan, scenes: [vote] };
    expect(readOwnLink(hashOf(printOwnLink(PAGE, now) ?? ''))).toEqual({ ok: true, plan: now });
    expect(readOwnLink(old.replace('=1.', '=0.'))).toEqual({ ok: false, fault: 'broken' });
  });

  test('what is too long is not printed', () => {
    const long: OwnPlan = {
      ...plan,
      scenes: [{ kind: 'say', heading: 'A', lines: [], notes: 'n'.repeat(1200) }, ...plan.scenes],
    };
    expect(printOwnLink(PAGE, long)).toBeUndefined();
  });

  test('says of a link what is wrong with it', () => {
    const link = hashOf(printOwnLink(PAGE, plan) ?? '');
    const fault = (hash: string) => {
      const read = readOwnLink(hash);
      return read.ok ? 'ok' : read.fault;
    };
    expect(fault('#scene-2')).toBe('none');
    expect(fault(link.replace('=2.', '=3.'))).toBe('other');
    expect(fault(link.slice(0, -9))).toBe('broken');
    expect(fault(`${link}${'A'.repeat(2000)}`)).toBe('long');
    expect(fault('#meeting=')).toBe('broken');
    expect(fault('#meeting=2.AAAA')).toBe('broken');
  });

  test('never throws and never makes a meeting of what is none: 20,000 links, seed 11', () => {
    const link = hashOf(printOwnLink(PAGE, plan) ?? '');
    const changed = fc
      .tuple(fc.nat(link.length - 1), fc.string({ minLength: 1, maxLength: 3 }))
      .map(([at, put]) => link.slice(0, at) + put + link.slice(at + put.length));
    const json = fc.json().map((text) => `#meeting=2.${Buffer.from(text).toString('base64url')}`);
    fc.assert(
      fc.property(fc.oneof(fc.string(), changed, json), (hash) => {
        const read = readOwnLink(hash);
        if (read.ok) {
          const again = printOwnLink(PAGE, read.plan);
          if (again !== undefined) expect(readOwnLink(hashOf(again))).toEqual(read);
        }
      }),
      { numRuns: 20_000, seed: 11 },
    );
  });
});
