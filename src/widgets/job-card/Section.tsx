import { STEPS, type Step } from '../../car/back-together.ts';
import type { JobCardModel } from './model.ts';
import { printCount, stateOf } from './print.ts';

/** Where each line's part lies, from the case down to the pan, and where its number stands. */
const PARTS: readonly (readonly [step: Step, d: string, x: number, y: number])[] = [
  ['clean', 'M20 36H370V96H300V66H284V96H20Z', 352, 54],
  ['drums', 'M60 44H180V88H60Z', 48, 54],
  ['lip', 'M72 58H168V74H72ZM72 58L66 54M168 58L174 54', 120, 72],
  ['rings', 'M180 58H250V74H180ZM198 53V79M214 53V79', 234, 71],
  ['air', 'M292 106V72M286 80L292 71L298 80', 274, 84],
  ['bridge', 'M258 97H326V106H302V112H282V106H258Z', 338, 111],
  ['body', 'M40 114H276V118H308V114H350V134H40Z', 234, 130],
  ['balls', 'M92 119a5 5 0 1 0 .1 0ZM116 119a5 5 0 1 0 .1 0ZM140 119a5 5 0 1 0 .1 0Z', 164, 130],
  ['pan', 'M28 138V158H362V138', 16, 154],
  ['fill', 'M30 148H360', 377, 154],
];

/** A section through the transmission: what is in, what is in without its proof, and what is still to come. */
export function Section({ model }: { readonly model: JobCardModel }) {
  return (
    <g aria-hidden="true" class="job-section">
      {PARTS.map(([step, d, x, y]) => (
        <g key={step} class={`job-${stateOf(model, step)}`}>
          <path d={d} />
          <text x={x} y={y} text-anchor="middle">
            {printCount(STEPS.indexOf(step) + 1)}
          </text>
        </g>
      ))}
    </g>
  );
}
