/** What paper shows of a simulation that nobody has run: the end of its run, drawn at build. */
import { render } from 'preact-render-to-string';
import { h } from 'preact';
import { describe, expect, it } from 'vitest';
import { ranOnPaper } from '../../src/simulation/frame/ran-on-paper.ts';
import { textFor } from '../../src/quantity/unit-system.ts';
import { everySimulation } from './every-simulation.ts';

const escaped = (text: string): string =>
  text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('"', '&quot;');
const ids = (html: string): readonly string[] =>
  Array.from(html.matchAll(/\sid="([^"]+)"/gu), ([, id = '']) => id);

describe.each(everySimulation)('$name on paper', ({ sim, makeModel, View, props }) => {
  if (View === undefined) return;
  const sheets = ranOnPaper(View, props);

  it('stands at the end of its run, in both unit systems', () => {
    const model = makeModel();
    model.apply(sim.predict.start);
    model.apply(sim.predict.end);
    for (const system of ['us', 'si'] as const) {
      const html = sheets.find(({ on }) => on === system || on === 'both')?.html ?? '';
      expect(html).toContain(`<h3>${escaped(sim.title)}</h3>`);
      expect(html).toContain(escaped(sim.says(model, system)));
      expect(html).toContain(escaped(textFor(sim.predict.outcome(model).words, system)));
      expect(html).not.toMatch(/NaN|undefined| style=|Loading the pictures|<form/u);
    }
  });

  it('shares no place with the living one, and names none that it has not', () => {
    const all = [render(h(View, props)), ...sheets.map(({ html }) => html)].flatMap(ids);
    expect(all.filter((id, i) => all.indexOf(id) !== i)).toEqual([]);
    for (const { html } of sheets) {
      const named = Array.from(html.matchAll(/url\(#([^)]+)\)/gu), ([, id = '']) => id);
      expect(named.filter((id) => !ids(html).includes(id))).toEqual([]);
    }
  });

  it('leaves what is drawn for the screen as it was', () => {
    const before = render(h(View, props));
    ranOnPaper(View, props);
    expect(render(h(View, props))).toBe(before);
  });
});
