import { LineChart } from '../../charts/LineChart.tsx';
import type { Mark, Series } from '../../charts/line-data.ts';
import { TEMP_AXIS, TEMPS } from '../../simulation/choices/temperatures.ts';
import { gripOf } from '../../simulation/grip-of.tsx';
import type { PictureProps } from '../../simulation/simulation-view.tsx';
import { dynamicViscosity, kinematicViscosity } from '../../quantity/quantities.ts';
import type { Quantity } from '../../quantity/quantity.ts';
import type { FluidModel, FluidSide } from './model.ts';
import { printCst, printMpas } from './print.ts';
import { sim } from './sim.ts';
import { words } from './words.en.ts';

type Kind = 'kinematic' | 'dynamic';
const KINDS: Readonly<Record<Kind, { quantity: Quantity; print: (value: number) => string }>> = {
  kinematic: { quantity: kinematicViscosity, print: printCst },
  dynamic: { quantity: dynamicViscosity, print: printMpas },
};
/** Even steps show the warm side, where a transmission works; the cold side needs the other scale. */
const EVEN_MAX = 250;
const TEN_MAX = 10_000;

function takeaway(kind: Kind, log: boolean, revealed: boolean): string {
  const { chart } = words;
  if (!revealed) return chart.asFarAsWarmed;
  if (kind === 'dynamic') return chart.feltByGap;
  return log ? chart.logScale : chart.evenScale;
}

interface ThicknessProps extends PictureProps<FluidModel> {
  readonly kind: Kind;
}

export function Thickness({ model, kind, revealed, live }: ThicknessProps) {
  const { givens, a, b } = model;
  const { quantity, print } = KINDS[kind];
  const temp = givens.temp.value;
  const log = givens.log.value;
  const alone = givens.fluidA.value === givens.fluidB.value;
  const values = ({ curve }: FluidSide) =>
    // Before the answer is out the line ends where the thermometer stands.
    curve.value.map((at, i) => (revealed || (TEMPS[i] ?? 0) <= temp ? (at?.[kind] ?? null) : null));
  const line = (side: FluidSide, letter: string, style: Series['kind']): Series => ({
    id: letter,
    label: words.chart.line({ side: letter, name: side.name.value }),
    kind: style,
    y: values(side),
  });
  const points = (alone ? [a] : [a, b])
    .flatMap((side, i) => {
      const at = side.now.value?.[kind];
      const letter = i === 0 ? 'A' : 'B';
      return at === undefined ? [] : [{ letter, at, words: `${letter}\u00a0${print(at)}` }];
    })
    .sort((one, other) => other.at - one.at);
  // The two may lie on top of each other: one name for both, in their order on the picture.
  const marks = points.map(({ letter, at }, i): Mark => ({
    id: letter,
    x: temp,
    y: at,
    kind: 'now',
    words: i === 0 ? points.map(({ words }) => words).join(', ') : '',
  }));
  const offPicture = !log && points.some(({ at }) => at > EVEN_MAX);
  return (
    <LineChart
      id={`fluid-${kind}`}
      name={words.chart.name[kind]}
      takeaway={offPicture ? words.chart.tooThick : takeaway(kind, log, revealed)}
      xAxis={TEMP_AXIS}
      yAxis={{
        label: words.chart[kind],
        quantity,
        min: log ? 1 : 0,
        max: log ? TEN_MAX : EVEN_MAX,
        scale: log ? 'log' : 'linear',
      }}
      x={TEMPS}
      series={[line(a, 'A', 'plain'), ...(alone ? [] : [line(b, 'B', 'healthy')])]}
      marks={marks}
      {...gripOf({ live }, sim, 'temp', givens.temp)}
    />
  );
}
