import { signal } from '@preact/signals';
import { render } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import { Both } from '../../src/ui/Both.tsx';
import { Choice } from '../../src/ui/Choice.tsx';
import { length, pressure, temperature } from '../../src/quantity/quantities.ts';
import { Slider } from '../../src/ui/Slider.tsx';
import { Toggle } from '../../src/ui/Toggle.tsx';

describe('on the server', () => {
  it('a slider says its value in words and units, and has buttons and a field', () => {
    const html = render(
      <Slider
        id="c"
        label="Crack"
        value={signal(0.16)}
        quantity={length}
        min={0}
        max={0.6}
        step={0.01}
        words={() => 'two hairs'}
      />,
    );
    expect(html).toContain('aria-valuetext="6\u00a0thousandths, two hairs"');
    expect(html).toContain('aria-label="Crack: less"');
    expect(html).toContain('aria-label="Crack: more"');
    expect(html).toContain('inputmode="decimal"');
    expect(html).not.toContain('style=');
  });
  it('a slider at its end says which way is shut', () => {
    const html = render(
      <Slider
        id="t"
        label="T"
        value={signal(140)}
        quantity={temperature}
        min={0}
        max={140}
        step={5}
      />,
    );
    expect(html).toMatch(/aria-label="T: less" aria-disabled="false"/u);
    expect(html).toMatch(/aria-label="T: more" aria-disabled="true"/u);
  });
  it('a choice and a toggle show what is chosen', () => {
    const options = [
      { value: 'a', words: 'One' },
      { value: 'b', words: 'Two' },
    ];
    const radios = render(<Choice id="x" label="Which" value={signal('b')} options={options} />);
    expect(radios.match(/checked/gu)).toHaveLength(1);
    expect(radios).toMatch(/value="b" checked/u);
    const select = render(
      <Choice id="x" label="Which" value={signal('b')} options={options} as="select" />,
    );
    expect(select).toMatch(/<option[^>]*(selected[^>]*value="b"|value="b"[^>]*selected)/u);
    const toggle = render(
      <Toggle id="s" label="Seal" value={signal(true)} on="split" off="whole" />,
    );
    expect(toggle).toContain('<strong>split</strong>');
  });
  it('a value stands in both systems, once where they agree', () => {
    expect(render(<Both value={620} quantity={pressure} />)).toBe(
      '<span class="number u-si">620\u00a0kPa</span><span class="number u-us">90\u00a0psi</span>',
    );
  });
});
