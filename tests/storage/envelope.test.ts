import { describe, expect, test } from 'vitest';
import { keeper } from '../../src/storage/envelope.ts';
import { textsAside, type Area } from '../../src/storage/slots.ts';
import { fakeArea } from './fake-area.ts';

interface Notes {
  readonly notes: readonly string[];
}
function parse(data: unknown): Notes | undefined {
  const { notes } = data as Notes;
  return Array.isArray(notes) ? { notes } : undefined;
}
const open = (area: Area, version = 1) =>
  keeper<Notes>({ name: 'notes', version, empty: { notes: [] }, parse, area });
const add = (note: string) => (old: Notes) => ({ notes: [...old.notes, note] });

describe('a keeper', () => {
  test('starts with nothing, and keeps what is written', () => {
    const area = fakeArea();
    expect(open(area).read()).toEqual({ data: { notes: [] }, status: 'nothing' });
    expect(open(area).update(add('one'))).toBe('ok');
    expect(open(area).update(add('two'))).toBe('ok');
    expect(open(area).read()).toEqual({ data: { notes: ['one', 'two'] }, status: 'ok' });
  });

  test('builds on what a second tab wrote in between', () => {
    const area = fakeArea();
    const [here, there] = [open(area), open(area)];
    here.update(add('here'));
    there.update(add('there'));
    here.update(add('here again'));
    expect(there.read().data.notes).toEqual(['here', 'there', 'here again']);
  });

  test('a write cut short by a full disk leaves the last state standing', () => {
    const area = fakeArea();
    open(area).update(add('safe'));
    for (const on of [/:(a|b)$/, /:slot$/]) {
      area.failWrites = { on, as: 'QuotaExceededError' };
      expect(open(area).update(add('lost'))).toBe('full');
      area.failWrites = null;
      expect(open(area).read()).toEqual({ data: { notes: ['safe'] }, status: 'ok' });
    }
  });

  test('says so where the browser blocks storage, when writing and when asked at all', () => {
    const area = fakeArea();
    area.failWrites = { on: /./, as: 'SecurityError' };
    expect(open(area).update(add('x'))).toBe('blocked');
    const refuse = () => {
      throw new DOMException('no', 'SecurityError');
    };
    const refusing = { getItem: refuse, setItem: refuse, removeItem: refuse };
    const blocked = open(refusing);
    expect(blocked.read()).toEqual({ data: { notes: [] }, status: 'blocked' });
    expect(blocked.update(add('x'))).toBe('blocked');
    expect(textsAside('notes', refusing)).toEqual([]);
  });

  test('unreadable data is copied aside, and the state before it is found', () => {
    const area = fakeArea();
    open(area).update(add('one'));
    open(area).update(add('two'));
    const slot = area.kept.get('hot-clutch:notes:slot') ?? '';
    area.kept.set(`hot-clutch:notes:${slot}`, '{"v":1,"n":2,"data":{"no');
    expect(open(area).read()).toEqual({ data: { notes: ['one'] }, status: 'recovered' });
    expect(textsAside('notes', area)).toEqual(['{"v":1,"n":2,"data":{"no']);
    open(area).update(add('three'));
    expect(open(area).read()).toEqual({ data: { notes: ['one', 'three'] }, status: 'ok' });
    expect(textsAside('notes', area)).toHaveLength(1);
  });

  test.each([
    ['not JSON', 'oops'],
    ['no envelope', '[1,2]'],
    ['no version', '{"n":1,"data":{"notes":[]}}'],
    ['wrong data', '{"v":1,"n":1,"data":{"notes":7}}'],
    ['an old version that nothing upgrades', '{"v":0,"n":1,"data":{"notes":[]}}'],
  ])('never writes over what it cannot read: %s', (_, text) => {
    const area = fakeArea();
    area.kept.set('hot-clutch:notes:slot', 'a');
    area.kept.set('hot-clutch:notes:a', text);
    area.kept.set('hot-clutch:notes:b', text);
    expect(open(area).read().status).toBe('unreadable');
    for (const note of ['one', 'two', 'three']) open(area).update(add(note));
    expect(open(area).read().data.notes).toEqual(['one', 'two', 'three']);
    expect(textsAside('notes', area)).toContain(text);
  });

  test('goes on after any number of texts that it could not read, and keeps them all', () => {
    const area = fakeArea();
    const broken = Array.from({ length: 12 }, (_, i) => `broken ${i}`);
    for (const text of broken) {
      open(area).update(add(text));
      area.kept.set(`hot-clutch:notes:${area.kept.get('hot-clutch:notes:slot') ?? ''}`, text);
      expect(open(area).update(add('after'))).toBe('ok');
    }
    expect(open(area).read().status).toBe('ok');
    expect(textsAside('notes', area)).toEqual(broken);
  });

  test.each(['lost', 'unreadable'])('with the pointer %s the later write is in force', (how) => {
    for (const writes of [1, 2, 3]) {
      const area = fakeArea();
      const notes = Array.from({ length: writes }, (_, i) => `note ${i}`);
      for (const note of notes) open(area).update(add(note));
      if (how === 'lost') area.kept.delete('hot-clutch:notes:slot');
      else area.kept.set('hot-clutch:notes:slot', 'c');
      expect(open(area).read()).toEqual({ data: { notes }, status: 'ok' });
      open(area).update(add('more'));
      expect(open(area).read().data.notes).toEqual([...notes, 'more']);
    }
  });

  test('will not write over unreadable data that there is no room to copy', () => {
    const area = fakeArea();
    area.kept.set('hot-clutch:notes:b', 'oops');
    area.failWrites = { on: /:aside:/, as: 'QuotaExceededError' };
    expect(open(area).update(add('one'))).toBe('full');
    expect(area.kept.get('hot-clutch:notes:b')).toBe('oops');
  });

  test('leaves alone what a newer version of the site wrote', () => {
    const area = fakeArea();
    open(area, 2).update(add('from the future'));
    const before = new Map(area.kept);
    expect(open(area, 1).read()).toEqual({ data: { notes: [] }, status: 'newer' });
    expect(open(area, 1).update(add('x'))).toBe('newer');
    expect(area.kept).toEqual(before);
  });

  test('upgrades old data step by step', () => {
    const area = fakeArea();
    area.kept.set('hot-clutch:notes:slot', 'a');
    area.kept.set('hot-clutch:notes:a', '{"v":1,"n":9,"data":"first"}');
    const now = keeper<Notes>({
      name: 'notes',
      version: 3,
      empty: { notes: [] },
      parse,
      area,
      upgrade: { 1: (old) => [old], 2: (old) => ({ notes: old }) },
    });
    expect(now.read()).toEqual({ data: { notes: ['first'] }, status: 'ok' });
    now.update(add('second'));
    expect(now.read().data.notes).toEqual(['first', 'second']);
  });
});
