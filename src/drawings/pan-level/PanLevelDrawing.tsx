import type { JSX } from 'preact';
import { Frame } from '../parts/frame.tsx';
import { circlePath, gearPath } from '../parts/gear.ts';
import { box, Cut } from '../parts/hatch.tsx';
import { Knob } from '../parts/knob.tsx';
import { Label } from '../parts/label.tsx';
import { roundPlace } from '../scale.ts';
import { describePanLevel, type PanLevelState } from './state.ts';
import { Thermometer } from './Thermometer.tsx';
import { words } from './words.en.ts';

const PX_PER_MM = 3.6;
const PAN = { left: 52, right: 320, top: 24, floor: 214 };
/** The mouth of the pick-up, the stick on the other side, and the middle between them. */
const MOUTH = { x: 270, y: 178 };
const STICK_X = 102;
const MIDDLE_X = (MOUTH.x + STICK_X) / 2;
/** Left of the stick, where the level is taken hold of. */
const GRIP_X = 74;
const GEAR = { x: 182, radius: 62 };
/** Bubbles in the neck where all that is drawn is air. */
const BUBBLES = 14;

const yOf = (mm: number): number => MOUTH.y - mm * PX_PER_MM;
const mmAt = (y: number): number => (MOUTH.y - y) / PX_PER_MM;
/** The surface does not leave the pan. */
const inPan = (y: number): number => Math.min(PAN.floor - 5, Math.max(PAN.top, y));

/** Heights are to one scale, widths to none. */
export function PanLevelDrawing({
  id,
  state,
  onLevel,
  onThermometer,
}: {
  id: string;
  state: PanLevelState;
  /** Given how far a pull of the surface has raised it [mm]; whoever takes it keeps it in range. */
  onLevel?: ((raisedMm: number) => void) | undefined;
  /** Given how high a pull has set the thermometer, 0 to 1. */
  onThermometer?: ((share: number) => void) | undefined;
}): JSX.Element {
  const { middleMm, mouthMm, gearsMm, temp, thermometer, other } = state;
  const slope = ((middleMm - mouthMm) * PX_PER_MM) / (MOUTH.x - MIDDLE_X);
  const yAt = (x: number): number => yOf(middleMm) + slope * (x - MIDDLE_X);
  const surface = (x: number): number => roundPlace(inPan(yAt(x)));
  const [left, right] = [surface(PAN.left), surface(PAN.right)];
  const [min, max, gears] = [state.minMm, state.maxMm, gearsMm].map(yOf) as [
    number,
    number,
    number,
  ];
  const gearY = gears - GEAR.radius;
  const bubbles = Math.ceil(state.air * BUBBLES);
  return (
    <Frame
      id={id}
      width={390}
      height={228}
      title={words.title}
      desc={describePanLevel(state)}
      cropped
    >
      <path
        class="dw-solid"
        d={`${gearPath(GEAR.x, gearY, GEAR.radius - 8, GEAR.radius, 26, -Math.PI / 2, 0.4)}${circlePath(GEAR.x, gearY, 16)}`}
      />
      <path
        class={temp ? `dw-fluid-${temp}` : 'dw-oil'}
        fill-opacity="0.2"
        d={`M${PAN.left} ${left}L${PAN.right} ${right}V${PAN.floor}H${PAN.left}z`}
      />
      <path class="dw-line" d={`M${PAN.left} ${left}L${PAN.right} ${right}`} />
      <Cut
        id={id}
        d={`M${PAN.left - 8} ${PAN.top}H${PAN.left}V${PAN.floor}H${PAN.right}V${PAN.top}H${PAN.right + 8}V${PAN.floor + 8}H${PAN.left - 8}z`}
      />
      {/* filter, its mouth below and its neck above */}
      <path
        class="dw-solid"
        d={`M258 -4V150H236V${MOUTH.y - 8}H256V${MOUTH.y}H284V${MOUTH.y - 8}H308V150H282V-4`}
      />
      <path class="dw-line" d={`M236 160H308M256 ${MOUTH.y}H284`} />
      {Array.from({ length: bubbles }, (_, i) => (
        <circle
          key={i}
          class="dw-line"
          cx={roundPlace(264 + ((i * 5) % 13))}
          cy={roundPlace(MOUTH.y - 14 - ((i * 23) % 130))}
          r="3"
        />
      ))}
      {other && (
        <path class="dw-line dw-other" d={`M${PAN.left} ${roundPlace(yOf(other.mm))}H236`} />
      )}
      <path class="dw-solid" d={box(STICK_X - 6, -4, 12, MOUTH.y + 4)} />
      <path fill={`url(#${id}-cut)`} d={box(STICK_X - 6, max, 12, min - max)} />
      <path
        class="dw-line"
        d={`M${STICK_X - 10} ${roundPlace(max)}h20M${STICK_X - 10} ${roundPlace(min)}h20`}
      />
      <Label
        x={38}
        y={max + 2}
        anchor="end"
        lines={[words.max]}
        to={`42,${roundPlace(max - 3)} ${STICK_X - 6},${roundPlace(max)}`}
      />
      <Label
        x={38}
        y={min + 8}
        anchor="end"
        lines={[words.min]}
        to={`42,${roundPlace(min + 3)} ${STICK_X - 6},${roundPlace(min)}`}
      />
      <text class="dw-text" x={GEAR.x} y={24} text-anchor="middle">
        {words.gears}
      </text>
      <Label x={288} y={15} lines={[words.toPump]} />
      <text class="dw-text" x="231" y="168" text-anchor="end">
        {words.filter}
      </text>
      <text class="dw-text" x={MOUTH.x} y="198" text-anchor="middle">
        {words.mouth}
      </text>
      {thermometer === undefined ? (
        <Label x={389} y={roundPlace(right + 5)} anchor="end" lines={[`*${state.labels.level}`]} />
      ) : (
        <Thermometer share={thermometer} label={state.labels.level} onShare={onThermometer} />
      )}
      {onLevel && (
        <Knob
          x={GRIP_X}
          y={surface(GRIP_X)}
          value={mmAt(surface(GRIP_X))}
          onPull={(from, down) => onLevel(from - down / PX_PER_MM - mmAt(yAt(GRIP_X)))}
        />
      )}
      {other && <Label x={140} y={roundPlace(yOf(other.mm) + 16)} lines={[other.words]} />}
    </Frame>
  );
}
