import { render } from 'preact-render-to-string';
import { describe, expect, test } from 'vitest';
import * as d from '../../src/drawings/index.ts';
import { PLATE_TURN } from '../../src/drawings/parts/detent.tsx';
import type { STROKE } from '../../src/drawings/parts/manual-valve.tsx';
import { PORT, PORTS, spoolAt } from '../../src/drawings/parts/manual-valve.tsx';
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

  test('the two filters have as many pleats as their names say, of one depth', () => {
    const markup = render(<d.FilterBuildDrawing id="f" />);
    // Folded media are the paths that climb from 198 to 146 again and again.
    const media = [...markup.matchAll(/d="(M[\d.]+ 198H[^"]*)"/g)].map(([, path = '']) => path);
    expect(media.map((path) => path.match(/ 146L/g)?.length)).toEqual([12, 6]);
    expect(markup).toContain('12 pleats');
    expect(markup).toContain('6 pleats');
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

  test('a mis-set cable moves the drawn plate, by as much as it shuts of the port', () => {
    const plate = (portOpen?: number): number => {
      const state = { range: 'D', misSet: portOpen !== undefined, portOpen } as const;
      const drawn = render(<d.MechanicalRangeDrawing id="m" state={state} />);
      return Number(/rotate\((-?[\d.]+)\)"><path class="dw-solid" d="M-7 -46/.exec(drawn)?.[1]);
    };
    expect(plate()).toBe(PLATE_TURN.D);
    expect(plate(0.5)).toBeLessThan(plate());
    expect(plate(0.1)).toBeLessThan(plate(0.5));
  });

  test('without power a spring parks, and the drawing says that a motor does not', () => {
    const drawn = (power: boolean) =>
      render(<d.ElectronicRangeDrawing id="e" state={{ range: 'D', power }} />);
    expect(drawn(false)).toContain('>The spring chose Park<');
    expect(drawn(false)).toContain('>stays put<');
    expect(drawn(true)).not.toContain('>stays put<');
  });
});

/**
 * The porting is judged from the edges of lands and ports alone: which ports open into the same room of the bore. That line meets one
 * range passage at most, and that a passage without line drains, is what a manual valve is for (common practice, no source).
 */
describe('the manual valve', () => {
  const rooms = (range: keyof typeof STROKE, short = 0): string[] => {
    const { left, groove, land, right } = spoolAt(range, short);
    const between: [number, number][] = [
      [-Infinity, left],
      [groove, land],
      [right, Infinity],
    ];
    return between.map(([from, to]) =>
      Object.entries(PORTS)
        .filter(([, at]) => Math.min(to, at + PORT) - Math.max(from, at) > 0.01)
        .map(([port]) => port)
        .join(' '),
    );
  };

  test('joins each port to what it should meet, and to nothing else', () => {
    // In Park the line meets nothing: a land covers it.
    expect(rooms('P')).toEqual(['', 'ventR reverse', 'drive ventD']);
    expect(rooms('R')).toEqual(['', 'reverse line', 'drive ventD']);
    expect(rooms('N')).toEqual(['ventR reverse', 'line', 'drive ventD']);
    expect(rooms('D')).toEqual(['ventR reverse', 'line drive', '']);
  });

  test('set short, feeds less and still never joins the line to a vent', () => {
    for (const range of ['P', 'R', 'N', 'D'] as const)
      for (let shut = 0; shut <= 0.9; shut += 0.05) {
        const line = rooms(range, PORT * shut).find((room) => room.includes('line')) ?? 'line';
        expect(line).not.toContain('vent');
        if (range === 'D') expect(line).toContain('drive');
        if (range === 'R') expect(line).toContain('reverse');
        if (range === 'P' || range === 'N') expect(line).toBe('line');
      }
  });

  test('is drawn under pressure where it is joined to the line, and nowhere else', () => {
    // Tints of the passages up to the clutch solenoids, Reverse and Drive.
    const tints = (range: keyof typeof STROKE): boolean[] => {
      const drawn = render(<d.MechanicalRangeDrawing id="m" state={{ range }} />);
      return [...drawn.matchAll(/fill-opacity="([\d.]+)" d="M[\d.]+ 56V32H/g)].map(
        ([, opacity]) => Number(opacity) > 0.06,
      );
    };
    expect(tints('P')).toEqual([false, false]);
    expect(tints('R')).toEqual([true, false]);
    expect(tints('N')).toEqual([false, false]);
    expect(tints('D')).toEqual([false, true]);
  });
});

describe('flows', () => {
  test('what the model does not move stands still', () => {
    // A clutch that is full takes only what leaks; none leaks, none flows.
    const seal = { ...d.transferSealExample, feed: 0, leak: 0 };
    const rings = { ...d.sealingRingsExample, leak: 0, onward: 0 };
    const spool = { ...d.spoolValveExample, flow: 0 };
    for (const drawn of [
      <d.TransferSealDrawing id="a" state={seal} />,
      <d.SealingRingsDrawing id="b" state={rings} />,
      <d.SpoolValveDrawing id="c" state={spool} />,
      <d.ParkPawlDrawing id="d" state={{ kind: 'controller', engage: 0 }} />,
      <d.MechanicalRangeDrawing id="e" state={{ range: 'P' }} />,
    ])
      expect(streams(render(drawn)).filter((step) => step > 0)).toEqual([]);
  });

  test('above a split seal less goes on than came up to it', () => {
    const split = { ...d.transferSealExample, crackMm: 0.25, feed: 3.9, leak: 3.3 };
    const [up = 0, onward = 0, lost = 0] = streams(
      render(<d.TransferSealDrawing id="s" state={split} />),
    );
    expect(up).toBe(flowStep(3.9));
    // 3.9 - 3.3, by hand.
    expect(onward).toBe(flowStep(0.6));
    expect(lost).toBe(flowStep(3.3));
  });
});

describe('piston arrows', () => {
  test('are as long as the forces are large, whatever these are', () => {
    const lengths = (oil: number, spring: number): number[] => {
      const force = { oil, spring, net: oil - spring };
      const drawn = render(
        <d.PistonSpringDrawing id="p" state={{ ...d.pistonSpringExample, force }} />,
      );
      return [...drawn.matchAll(/V-10L([\d.]+) 0L/g)].map(([, length]) => Number(length));
    };
    for (const [oil, spring] of [
      [3400, 900],
      [6800, 900],
      [9000, 2700],
    ] as const) {
      const [pushes = 0, back = 0, left = 0] = lengths(oil, spring);
      expect(back / pushes).toBeCloseTo(spring / oil, 2);
      expect(left / pushes).toBeCloseTo((oil - spring) / oil, 2);
    }
    // Twice the pressure, twice the arrow.
    expect((lengths(6800, 900)[0] ?? 0) / (lengths(3400, 900)[0] ?? 1)).toBeCloseTo(2, 2);
  });

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
