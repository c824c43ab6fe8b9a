import { render } from 'preact-render-to-string';
import { describe, expect, test } from 'vitest';
import * as d from '../../src/drawings/index.ts';
import { crackWidth } from '../../src/drawings/parts/seal.tsx';
import { flowStep, pressureStep } from '../../src/drawings/scale.ts';
import { circuitHot } from './gallery.tsx';

const rises = (xs: readonly number[]): boolean =>
  xs.every((x, i) => i === 0 || x >= (xs[i - 1] ?? 0));
const streams = (markup: string): number[] =>
  [...markup.matchAll(/data-flow="(\d)"/g)].map((m) => Number(m[1]));

describe('the picture follows the numbers', () => {
  test('more flow never moves slower, and none stands still', () => {
    const steps = Array.from({ length: 200 }, (_, i) => flowStep(i / 10));
    expect(rises(steps)).toBe(true);
    expect(steps[0]).toBe(0);
    expect(steps.at(-1)).toBe(6);
  });

  test('more pressure never hatches wider', () => {
    const steps = Array.from({ length: 101 }, (_, i) => pressureStep(i / 100));
    expect(rises(steps)).toBe(true);
    expect(new Set(steps).size).toBe(6);
  });

  test('a wider crack is drawn wider, and a whole seal has none', () => {
    const widths = [0, 0.02, 0.07, 0.14, 0.25, 0.4].map((mm) => crackWidth(mm, 20));
    expect(widths[0]).toBe(0);
    expect(rises(widths)).toBe(true);
    expect(new Set(widths).size).toBe(widths.length);
  });

  test('the leak runs only from a cracked seal', () => {
    const whole = { ...circuitHot, crackMm: 0, flows: { ...circuitHot.flows, crack: 0 } };
    const count = (s: d.CircuitState): number =>
      streams(render(<d.CircuitDrawing id="x" state={s} />)).filter((n) => n > 0).length;
    expect(count(circuitHot)).toBe(count(whole) + 1);
  });

  test('holds and slips are words on the drawing, not only a shade', () => {
    const at = (holds: boolean): string =>
      render(<d.CircuitDrawing id="x" state={{ ...circuitHot, holds }} />);
    expect(at(true)).toContain('>holds<');
    expect(at(false)).toContain('>slips<');
  });
});

describe('who can move the park pawl', () => {
  const ranges = ['P', 'R', 'N', 'D'] as const;
  const drawn = (el: Parameters<typeof render>[0]): boolean => render(el).includes('>Park holds<');

  test('with a cable, the lever alone: fail-safe changes nothing', () => {
    for (const range of ranges)
      for (const failSafe of [false, true])
        expect(drawn(<d.MechanicalRangeDrawing id="m" state={{ range, failSafe }} />)).toBe(
          range === 'P',
        );
  });

  test('with a controller, fail-safe parks a standing vehicle and spares a rolling one', () => {
    for (const range of ranges) {
      expect(drawn(<d.ElectronicRangeDrawing id="e" state={{ range }} />)).toBe(range === 'P');
      expect(drawn(<d.ElectronicRangeDrawing id="e" state={{ range, failSafe: true }} />)).toBe(
        true,
      );
      expect(
        drawn(<d.ElectronicRangeDrawing id="e" state={{ range, failSafe: true, rolling: true }} />),
      ).toBe(false);
    }
  });

  test('a mis-set cable moves the drawn plate', () => {
    const plate = (misSet: boolean): string =>
      /rotate\((-?[\d.]+) 150 205\)/.exec(
        render(<d.MechanicalRangeDrawing id="m" state={{ range: 'D', misSet }} />),
      )?.[1] ?? '';
    expect(Number(plate(false))).toBe(27);
    expect(Number(plate(true))).toBeLessThan(27);
  });
});

describe('piston arrows', () => {
  test('show nothing for the plates while the spring wins', () => {
    const weak = {
      ...d.pistonSpringExample,
      pressure: 0.05,
      force: { oil: 425, spring: 900, net: 0 },
      labels: { ...d.pistonSpringExample.labels, oil: '425 N', net: '0 N' },
    };
    expect(d.describePistonSpring(weak)).toContain('nothing squeezes the plates');
    const markup = render(<d.PistonSpringDrawing id="p" state={weak} />);
    // 900 - 425, by hand.
    expect(markup).toContain('short by 475\u00a0N');
  });
});
