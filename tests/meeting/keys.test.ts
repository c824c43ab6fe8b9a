import { describe, expect, test } from 'vitest';
import { commandOf, type Pressed } from '../../src/meeting/keys.ts';

const press = (key: string, more: Partial<Pressed> = {}): Pressed => ({
  ...{ key, code: '', shiftKey: false, ctrlKey: false, altKey: false, metaKey: false },
  ...more,
});

describe('keys of the stage', () => {
  // What clickers send: the HID usages Page Up, Page Down, B and full stop are common practice; no source.
  test.each([
    ['PageDown', 'next'],
    ['PageUp', 'back'],
    ['b', 'blank'],
    ['.', 'blank'],
    ['ArrowRight', 'next'],
    ['ArrowLeft', 'back'],
    [' ', 'next'],
    ['Home', 'first'],
    ['End', 'last'],
    ['Escape', 'leave'],
    ['p', 'pause'],
    ['r', 'restart'],
    ['?', 'keys'],
    ['B', 'blank'],
  ])('%j: %s', (key, does) => {
    expect(commandOf(press(key), 'stage')).toEqual({ do: does });
  });

  test('a figure adds a hand, and with Shift takes one, whatever sign the layout gives', () => {
    expect(commandOf(press('3', { code: 'Digit3' }), 'stage')).toEqual({
      do: 'hand',
      option: 2,
      by: 1,
    });
    expect(commandOf(press('#', { code: 'Digit3', shiftKey: true }), 'stage')).toEqual({
      ...{ do: 'hand', option: 2, by: -1 },
    });
    expect(commandOf(press('6', { code: 'Digit6' }), 'stage')).toBeUndefined();
  });

  test('in a field for text only Escape and the clicker are the stage’s', () => {
    expect(commandOf(press('b'), 'text')).toBeUndefined();
    expect(commandOf(press('ArrowRight'), 'text')).toBeUndefined();
    expect(commandOf(press('PageDown'), 'text')).toEqual({ do: 'next' });
    expect(commandOf(press('Escape'), 'text')).toEqual({ do: 'leave' });
  });

  test('a control of a simulation keeps its arrows, and a clicker goes on all the same', () => {
    expect(commandOf(press('ArrowRight'), 'control')).toBeUndefined();
    expect(commandOf(press('1', { code: 'Digit1' }), 'control')).toBeUndefined();
    expect(commandOf(press('PageDown'), 'control')).toEqual({ do: 'next' });
  });

  test('space presses the button it is on', () => {
    expect(commandOf(press(' '), 'button')).toBeUndefined();
    expect(commandOf(press('ArrowRight'), 'button')).toEqual({ do: 'next' });
  });

  test('what the browser does with Ctrl, Alt and Meta stays the browser’s', () => {
    for (const held of ['ctrlKey', 'altKey', 'metaKey'] as const)
      expect(commandOf(press('p', { [held]: true }), 'stage')).toBeUndefined();
  });
});
