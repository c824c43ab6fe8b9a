import { useMemo } from 'preact/hooks';
import { LineChart } from '../../charts/LineChart.tsx';
import type { Mark, Series } from '../../charts/line-data.ts';
import {
  dynamicViscosity,
  kinematicViscosity,
  temperature,
  type Quantity,
} from '../../ui/quantity.ts';
import type { PictureContext } from '../../simulation/sim-spec.ts';
import { SimShell } from '../../simulation/SimShell.tsx';
import { makeFluidModel, TEMPS, type FluidModel, type FluidSide } from './model.ts';
import { OwnField } from './OwnField.tsx';
import { SideBySide } from './SideBySide.tsx';
import { fluidSim } from './sim.ts';
import { sayCst, sayMpas } from './words.ts';

type Kind = 'kinematic' | 'dynamic';
const KINDS: Readonly<
  Record<Kind, { name: string; quantity: Quantity; say: (value: number) => string }>
> = {
  kinematic: { name: 'Kinematic viscosity', quantity: kinematicViscosity, say: sayCst },
  dynamic: { name: 'Dynamic viscosity', quantity: dynamicViscosity, say: sayMpas },
};
/** Even steps show the warm side, where a gearbox works; the cold side needs the other scale. */
const EVEN_MAX = 250;
const TEN_MAX = 10_000;

export function Fluid() {
  const model = useMemo(makeFluidModel, []);
  const drawn = useMemo(
    () => ({
      own40: (id: string) => <OwnField id={id} which="own40" model={model} />,
      own100: (id: string) => <OwnField id={id} which="own100" model={model} />,
    }),
    [model],
  );
  return (
    <SimShell
      sim={fluidSim}
      model={model}
      drawn={drawn}
      picture={(context) => <Thickness model={model} kind="kinematic" {...context} />}
      below={(context) => (
        <>
          <SideBySide model={model} />
          <Thickness model={model} kind="dynamic" {...context} />
        </>
      )}
    />
  );
}

function takeaway(kind: Kind, log: boolean, revealed: boolean): string {
  if (!revealed) return 'Two fluids, as far as they have been warmed.';
  if (kind === 'dynamic') return 'Kinematic viscosity times density. This is what a gap feels.';
  return log ? 'Each line up is ten times thicker.' : 'Steep in the cold, flat when hot.';
}

interface ThicknessProps extends PictureContext {
  readonly model: FluidModel;
  readonly kind: Kind;
}

function Thickness({ model, kind, revealed }: ThicknessProps) {
  const { givens, a, b } = model;
  const { name, quantity, say } = KINDS[kind];
  const temp = givens.temp.value;
  const log = givens.log.value;
  const alone = givens.fluidA.value === givens.fluidB.value;
  const values = ({ curve }: FluidSide) =>
    // Before the answer is out the line ends where the thermometer stands.
    curve.value.map((at, i) => (revealed || (TEMPS[i] ?? 0) <= temp ? (at?.[kind] ?? null) : null));
  const line = (side: FluidSide, letter: string, style: Series['kind']): Series => ({
    id: letter,
    label: `${letter}: ${side.name.value}`,
    kind: style,
    y: values(side),
  });
  const points = (alone ? [a] : [a, b])
    .flatMap((side, i) => {
      const at = side.now.value?.[kind];
      const letter = i === 0 ? 'A' : 'B';
      return at === undefined ? [] : [{ letter, at, words: `${letter}\u00a0${say(at)}` }];
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
      name={`${name} against temperature`}
      takeaway={
        offPicture
          ? 'It is too thick here for this picture. “More controls” has a scale that reaches it.'
          : takeaway(kind, log, revealed)
      }
      xAxis={{ label: 'Temperature', quantity: temperature, min: -30, max: 140 }}
      yAxis={{
        label: name,
        quantity,
        min: log ? 1 : 0,
        max: log ? TEN_MAX : EVEN_MAX,
        scale: log ? 'log' : 'linear',
      }}
      x={TEMPS}
      series={[line(a, 'A', 'plain'), ...(alone ? [] : [line(b, 'B', 'healthy')])]}
      marks={marks}
    />
  );
}
