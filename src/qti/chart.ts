/** The chart of a question: a picture beside the item, in the units of the package, and the same in numbers under it. */
import type { Element } from 'xast';
import { x } from 'xastscript';
import type { UnitSystem } from '../quantity/unit-system.ts';
import { passageText } from '../quiz/asked.ts';
import type { ChartPicture, PictureAxis } from '../quiz/chart-picture.ts';
import { chartPath } from './names.ts';
import { passageNodes, settled } from './passage.ts';
import { words } from './words.en.ts';
import { all, jsonIn } from './xml.ts';

const SVG = 'http://www.w3.org/2000/svg';
/** Lines are told apart by letter and by how they are drawn. */
const DASHES = ['', '8 5', '2 4', '12 4 2 4'];

const asKept = (chart: ChartPicture): ChartPicture => ({
  ...chart,
  about: settled(chart.about),
  rows: chart.rows.map((row) => row.map(settled)),
});

export const chartNodes = (id: string, chart: ChartPicture, system: UnitSystem): Element[] => [
  x('p', [
    x('img', {
      src: `../${chartPath(id)}`,
      alt: passageText(chart.about, system),
      width: String(chart.width),
      height: String(chart.height),
      'data-chart': JSON.stringify(asKept(chart)),
    }),
  ]),
  x('details', [
    x('summary', words.asTable),
    x('table', [
      x('thead', [
        x(
          'tr',
          chart.head.map((name) => x('th', { scope: 'col' }, name)),
        ),
      ]),
      x(
        'tbody',
        chart.rows.map((row) =>
          x(
            'tr',
            row.map((cell) => x('td', passageNodes(cell, system))),
          ),
        ),
      ),
    ]),
  ]),
];

/** What the picture was drawn from: a drawing cannot be turned back. */
export function readChart(item: Element): { readonly chart: unknown } | undefined {
  const [image] = all(item, 'img');
  return image && { chart: jsonIn(image, 'data-chart') };
}

export function chartSvg(chart: ChartPicture, system: UnitSystem): Element {
  const { width, height, left, right, top, bottom, lines } = chart;
  return x(
    'svg',
    { xmlns: SVG, viewBox: `0 0 ${width} ${height}`, width, height, 'font-family': 'sans-serif' },
    [
      x('rect', { width, height, fill: 'white' }),
      ...across(chart.x[system], chart),
      ...up(chart.y[system], chart),
      stroke(`M${left} ${top}V${bottom}H${right}`, 1.5),
      ...lines.flatMap(({ path, letter, x: atX, y: atY }, place) => [
        stroke(path, 2, DASHES[place % DASHES.length]),
        label(letter, { x: atX, y: atY, 'font-weight': 'bold' }),
      ]),
    ],
  );
}

const stroke = (d: string, width: number, dashes = ''): Element =>
  x('path', {
    d,
    fill: 'none',
    stroke: 'black',
    'stroke-width': width,
    ...(dashes !== '' && { 'stroke-dasharray': dashes }),
  });

const label = (text: string, at: Readonly<Record<string, string | number>>): Element =>
  x('text', { 'font-size': 13, ...at }, text);

const across = (axis: PictureAxis, { bottom, right, height }: ChartPicture): Element[] => [
  ...axis.ticks.flatMap(({ place, text }) => [
    stroke(`M${place} ${bottom}v5`, 1),
    label(text, { x: place, y: bottom + 19, 'text-anchor': 'middle' }),
  ]),
  label(axis.title, { x: right, y: height - 8, 'text-anchor': 'end' }),
];

const up = (axis: PictureAxis, { left, right }: ChartPicture): Element[] => [
  ...axis.ticks.flatMap(({ place, text }) => [
    stroke(`M${left} ${place}H${right}`, 0.5),
    label(text, { x: left - 6, y: place + 4, 'text-anchor': 'end' }),
  ]),
  label(axis.title, { x: 0, y: 13 }),
];
