import type { JSX } from 'preact';
import { Frame } from '../parts/frame.tsx';
import { box, Cut, Oil } from '../parts/hatch.tsx';
import { Label, Verdict } from '../parts/label.tsx';
import { Plates } from '../parts/plates.tsx';
import { Spring } from '../parts/spring.tsx';
import { words as parts } from '../parts/clutch-words.en.ts';
import { clamp01, roundPlace } from '../scale.ts';
import { describeClutchPack, isFree, type ClutchPackState } from './state.ts';
import { words } from './words.en.ts';

/** Upper half of the clutch above its axis. Same section as in the circuit, the other half of it. */
export function ClutchPackDrawing({
  id,
  state,
}: {
  id: string;
  state: ClutchPackState;
}): JSX.Element {
  const t = clamp01(state.travel);
  const px = 92 + 16 * t;
  const free = isFree(state);
  const is = free ? 'released' : 'applied';
  const { torque } = state.labels;
  return (
    <Frame
      id={id}
      width={390}
      height={372}
      title={words.title[is]}
      desc={describeClutchPack(state)}
    >
      <Cut
        id={id}
        other
        d={`M8 276H250V312H8z${box(60, 276, 18, 22)}${box(8, 292, 70, 12)}M262 276H382V312H262z`}
      />
      <Oil id={id} d="M8 292H60V270H78V304H8z" pressure={state.pressure} />
      <path class="dw-line" d="M8 292H60V270M78 270V304H8" />
      <path class="dw-centre" d="M0 322H390" />
      <Oil id={id} d={`M62 100H${roundPlace(px)}V262H78V270H62z`} pressure={state.pressure} />
      <Cut id={id} d="M44 84H330V100H62V262H60V276H44zM78 262H240V276H78z" />
      <Cut id={id} other d={`M${roundPlace(px)} 108h16v46h14v44h-14v56h-16z`} />
      <path
        class="dw-soft"
        d={`M${roundPlace(px + 3)} 100h9l3 9h-15zM${roundPlace(px + 3)} 262h9l3 -9h-15z`}
      />
      <Spring x1={px + 16} y1={238} x2={214} y2={238} radius={13} coils={6} />
      <path class="dw-solid" d={`${box(214, 218, 8, 44)}${box(222, 254, 6, 8)}`} />
      <Plates
        id={id}
        x={px + 31}
        hubY={194}
        drumY={100}
        pairs={5}
        thickness={12.4}
        gap={1.6 * (1 - t)}
      />
      <Cut id={id} d="M264 100h18v62h-18z" />
      <path class="dw-ink" d={box(284, 92, 7, 18)} />
      <Cut id={id} other d="M146 194H356V206H146zM344 206H356V276H344z" />

      <Verdict
        id={id}
        x={322}
        y={4}
        holds={state.holds && !free}
        word={free ? words.free : undefined}
      />
      <Label
        x={8}
        y={20}
        lines={[
          `*${words[is](state.labels)}`,
          ...(torque && !free ? [words.carries({ torque })] : []),
        ]}
        to={`30,${torque && !free ? 44 : 27} 30,206 70,206`}
      />
      <Label x={48} y={72} lines={[words.drum]} to="64,77 64,91" />
      <Label x={100} y={72} lines={[words.steel]} to={`134,77 ${px + 37},120`} />
      <Label x={184} y={72} lines={[words.friction]} to={`220,77 ${px + 50 + 25},150`} />
      <Label x={386} y={72} anchor="end" lines={[words.snapRing]} to="346,77 289,98" />
      <Label x={386} y={132} anchor="end" lines={words.pressurePlate} to="322,130 275,134" />
      <Label x={386} y={190} anchor="end" lines={[words.hub]} to="358,186 330,199" />
      <Label x={238} y={234} lines={[parts.spring]} to="236,231 186,236" />
      <Label x={238} y={256} lines={[words.retainer]} to="236,251 219,249" />
      <Label x={96} y={354} lines={[parts.piston]} to={`114,341 ${px + 8},226`} />
      <text class="dw-text" x="210" y="300" text-anchor="middle">
        {words.drives}
      </text>
      <text class="dw-text" x="322" y="300" text-anchor="middle">
        {words.driven}
      </text>
      <Label x={8} y={354} lines={[words.oil]} to="28,342 34,300" />
      <Label x={192} y={354} lines={[words.seals]} to={`200,341 ${px + 9},259`} />
    </Frame>
  );
}
