import type { JSX } from 'preact';
import { format } from '../../quantity/print.ts';
import { force as pushes } from '../../quantity/part-quantities.ts';
import { ForceArrow } from '../parts/force-arrow.tsx';
import { Frame } from '../parts/frame.tsx';
import { box, Cut, Oil } from '../parts/hatch.tsx';
import { Label } from '../parts/label.tsx';
import { Spring } from '../parts/spring.tsx';
import { clamp01, roundPlace } from '../scale.ts';
import { words as parts } from '../parts/clutch-words.en.ts';
import { describePistonSpring, type PistonSpringState } from './state.ts';
import { words } from './words.en.ts';

/** All three arrows share one scale: this long at this many newtons, unless the state names another force. */
const FULL_FORCE = 10_200;
const FULL_LENGTH = 148;

/** The first plate stands here; the piston touches it when its travel is done. */
const PLATE = 238;
const AXIS = 130;

export function PistonSpringDrawing({
  id,
  state,
}: {
  id: string;
  state: PistonSpringState;
}): JSX.Element {
  const { force, labels } = state;
  const arrow = (newtons: number): number =>
    (Math.min(1, Math.max(0, newtons) / (state.fullForce ?? FULL_FORCE)) || 0) * FULL_LENGTH;
  const travel = force.spring > 0 ? clamp01(force.oil / force.spring) : 1;
  const px = roundPlace(164 + 16 * travel);
  const short = labels.short ?? format(force.spring - force.oil, pushes, 'si');
  const { names } = words;
  return (
    <Frame id={id} width={390} height={284} title={words.title} desc={describePistonSpring(state)}>
      <Oil
        id={id}
        d={`${box(22, 66, px - 22, 128)}${box(2, AXIS - 10, 20, 20)}`}
        pressure={state.pressure}
      />
      <Cut id={id} d={`M10 52H236V66H22V${AXIS - 10}H10zM10 ${AXIS + 10}H22V194H236V208H10z`} />
      <path class="dw-line" d={`M2 ${AXIS - 10}H10M2 ${AXIS + 10}H10`} />
      <Cut id={id} other d={`M${px} 68h16v46H${px + 58}v32H${px + 16}v46h-16z`} />
      <path class="dw-soft" d={`M${px + 3} 66h9l3 9h-15zM${px + 3} 194h9l3 -9h-15z`} />
      {[86, 174].map((y) => (
        <g key={y}>
          <Spring x1={px + 16} y1={y} x2={226} y2={y} radius={13} coils={4} />
          <path class="dw-solid" d={box(226, y < AXIS ? 66 : 158, 8, 36)} />
        </g>
      ))}
      <Cut id={id} d={box(PLATE, 92, 9, 76)} />

      <ForceArrow x={px - arrow(force.oil)} y={AXIS} length={arrow(force.oil)} />
      <ForceArrow x={px + 16 + arrow(force.spring)} y={86} length={-arrow(force.spring)} hollow />
      <ForceArrow x={PLATE + 9} y={AXIS} length={arrow(force.net)} />

      <Label x={30} y={88} lines={[words.oil, `*${labels.oil}`]} />
      <Label x={30} y={184} lines={[words.on(labels)]} />
      <Label
        x={386}
        y={58}
        anchor="end"
        lines={[words.spring, `*${labels.spring}`]}
        to={`296,56 ${px + 16 + Math.max(6, arrow(force.spring) / 2)},86`}
      />
      <Label
        x={256}
        y={force.net > 0 ? 162 : 126}
        lines={[words.plates.join(' '), `*${force.net > 0 ? labels.net : words.nothing}`]}
      />
      {force.net <= 0 && <Label x={256} y={162} lines={[words.short({ force: short })]} />}

      <Label x={8} y={20} lines={[names.cylinder]} to="40,26 40,58" />
      <Label x={112} y={20} lines={[parts.piston]} to={`140,26 ${px + 8},100`} />
      <Label x={200} y={20} lines={[parts.spring]} to="240,26 216,76" />
      <Label x={84} y={246} lines={[names.seal]} to={`136,232 ${px + 8},191`} />
      <Label x={180} y={246} lines={[names.seat]} to="200,232 229,186" />
      <Label x={226} y={246} lines={[names.plate]} to="246,232 243,162" />
      <text class="dw-text dw-quiet" x="8" y="276">
        {words.scale}
      </text>
    </Frame>
  );
}
