import { readFileSync } from 'node:fs';
import { render } from 'preact-render-to-string';
import { describe, expect, test } from 'vitest';
import * as d from '../../src/drawings/index.ts';
import { circuitHot, samples } from './gallery.tsx';

const ids = (markup: string): string[] =>
  [...markup.matchAll(/\sid="([^"]+)"/g)].map((m) => m[1] ?? '');
const refs = (markup: string): string[] => [
  ...[...markup.matchAll(/url\(#([^)]+)\)/g)].map((m) => m[1] ?? ''),
  ...[...markup.matchAll(/aria-(?:labelledby|describedby)="([^"]+)"/g)].map((m) => m[1] ?? ''),
];
const decode = (s: string): string =>
  s
    .replaceAll('&amp;', '&')
    .replaceAll('&lt;', '<')
    .replaceAll('&quot;', '"')
    .replaceAll('&#39;', "'");

describe.each(samples)('$name', ({ draw, text, mentions }) => {
  const one = render(draw('one'));
  const two = render(draw('two'));

  test('has a title, and a description that is its text equivalent', () => {
    expect(/<title id="one-title">([^<]{8,})<\/title>/.test(one)).toBe(true);
    expect(decode(/<desc id="one-desc">([^<]*)<\/desc>/.exec(one)?.[1] ?? '')).toBe(text);
  });

  test('says what it was given', () => {
    const read = text.toLowerCase().replaceAll('\u00a0', ' ');
    for (const word of mentions) expect(read).toContain(word.toLowerCase());
  });

  test('stands twice on a page without sharing an id, and refers only to its own', () => {
    const all = ids(one + two);
    expect(new Set(all).size).toBe(all.length);
    const own = new Set(ids(one));
    const wanted = refs(one);
    expect(wanted.length).toBeGreaterThan(2);
    expect(wanted.filter((ref) => !own.has(ref))).toEqual([]);
  });

  test('writes only numbers, no inline style and no colour of its own', () => {
    expect(one).not.toMatch(/NaN|Infinity|undefined|null|\[object/);
    // Long decimals differ between server and browser arithmetic and would repaint on hydration.
    expect(one).not.toMatch(/\d\.\d{4,}/);
    expect(one).not.toMatch(/\sstyle=|<style|#[0-9a-f]{3,6}"|rgb\(/);
  });

  test('draws every class from the style sheets of the drawings', () => {
    const css = ['drawings.css', 'whole-car/whole-car-drawing.css']
      .map((file) => readFileSync(new URL(`../../src/drawings/${file}`, import.meta.url), 'utf8'))
      .join('');
    const used = new Set(
      [...one.matchAll(/class="([^"]+)"/g)].flatMap((m) => (m[1] ?? '').split(' ')),
    );
    const missing = [...used].filter((c) => !css.includes(`.${c}`));
    expect(missing).toEqual([]);
  });
});

describe('any state', () => {
  test('keeps its numbers short and its picture whole', () => {
    for (let i = 0; i < 16; i += 1) {
      // Thirds and sevenths: values that never come out even.
      const u = (i % 7) / 7;
      const v = (i % 11) / 11;
      const markup = [
        <d.CircuitDrawing
          id="a"
          state={{
            ...circuitHot,
            pressures: { line: u, clutch: v * 0.2 },
            flows: {
              pump: 10 * u,
              clearances: u,
              feed: 4 * v,
              rings: v,
              crack: u * v,
              leftOver: v,
            },
            crackMm: u * 0.4,
          }}
        />,
        <d.ParkPawlDrawing id="b" state={{ kind: i % 2 ? 'cable' : 'controller', engage: u }} />,
        <d.ClutchPackDrawing id="c" state={{ ...d.clutchPackExample, pressure: u, travel: v }} />,
        <d.SpoolValveDrawing id="d" state={{ ...d.spoolValveExample, position: v }} />,
        <d.SealingRingsDrawing id="e" state={{ ...d.sealingRingsExample, wear: u }} />,
        <d.TransferSealDrawing
          id="f"
          state={{ ...d.transferSealExample, crackMm: v / 3, leak: u }}
        />,
        <d.PistonSpringDrawing
          id="g"
          state={{
            ...d.pistonSpringExample,
            pressure: u,
            force: { oil: 8500 * u, spring: 900, net: 8500 * u - 900 },
          }}
        />,
        <d.PumpRegulatorDrawing
          id="h"
          state={{
            ...d.pumpRegulatorExample,
            line: u,
            flows: { pump: 10, toClutches: 10 * u, leftOver: 10 * v },
          }}
        />,
        <d.SpeedSensorsDrawing
          id="i"
          state={{ turbineRpm: 3000 * u, outputRpm: 700 * v, ratio: 3.4 }}
        />,
        <d.ConverterDrawing
          id="j"
          state={{ engineRpm: 3000 * u, turbineRpm: 2500 * v, statorHolds: u > v }}
        />,
      ].map((el) => render(el));
      expect(markup.map((m) => /.{0,60}(NaN|\d\.\d{4,})/.exec(m)?.[0]).filter(Boolean)).toEqual([]);
    }
  });
});

describe('what is not a number', () => {
  test('draws at rest instead of breaking the picture', () => {
    const bad = Number.NaN;
    const markup = [
      <d.CircuitDrawing
        id="a"
        state={{
          ...circuitHot,
          pressures: { line: bad, clutch: bad },
          flows: { pump: bad, clearances: bad, feed: bad, rings: bad, crack: bad, leftOver: bad },
          crackMm: bad,
        }}
      />,
      <d.TransferSealDrawing
        id="b"
        state={{ ...d.transferSealExample, crackMm: bad, leak: bad, pressure: bad }}
      />,
      <d.SealingRingsDrawing
        id="c"
        state={{ ...d.sealingRingsExample, wear: bad, pressure: bad, leak: bad }}
      />,
      <d.ClutchPackDrawing id="d" state={{ ...d.clutchPackExample, pressure: bad, travel: bad }} />,
      <d.PistonSpringDrawing
        id="e"
        state={{
          ...d.pistonSpringExample,
          pressure: bad,
          force: { oil: bad, spring: bad, net: bad },
        }}
      />,
      <d.SpoolValveDrawing id="f" state={{ ...d.spoolValveExample, position: bad }} />,
      <d.ConverterDrawing id="g" state={{ engineRpm: bad, turbineRpm: bad, statorHolds: true }} />,
      <d.SpeedSensorsDrawing id="h" state={{ turbineRpm: bad, outputRpm: bad, ratio: bad }} />,
      <d.ParkPawlDrawing id="i" state={{ kind: 'cable', engage: bad }} />,
      <d.PumpRegulatorDrawing
        id="j"
        state={{
          ...d.pumpRegulatorExample,
          line: bad,
          flows: { pump: bad, toClutches: bad, leftOver: bad },
        }}
      />,
    ].map((el) => render(el));
    expect(markup.map((m) => /.{0,60}(NaN|Infinity)/.exec(m)?.[0]).filter(Boolean)).toEqual([]);
  });
});
