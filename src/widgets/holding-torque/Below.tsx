import {
  ClutchPackDrawing,
  describeClutchPack,
  describePistonSpring,
  PistonSpringDrawing,
  type ClutchPackState,
  type PistonSpringState,
} from '../../drawings/index.ts';
import { More } from '../../ui/More.tsx';
import { printer } from '../../quantity/print.ts';
import { area, force as newtons } from '../../quantity/part-quantities.ts';
import { pressure, torque } from '../../quantity/quantities.ts';
import { Readout } from '../../ui/Readout.tsx';
import { useUnits } from '../../ui/use-units.ts';
import { bookNumber, BOOKS, howOf } from './books.ts';
import { needed } from '../../simulation/required/control.ts';
import type { HoldingModel } from './model.ts';
import { words } from './words.en.ts';

/** Shown once the answer is out, and fetched then. */
export function Below({ model }: { readonly model: HoldingModel }) {
  return (
    <>
      <Piston model={model} />
      <Pack model={model} />
      <Books model={model} />
    </>
  );
}

/** Full scale of the drawings' tints [kPa]. */
const FULL_SCALE = 1000;
/** One scale for the training clutch, a bigger one where a book's piston is bigger [N]. */
const FORCE_SCALES = [10_200, 31_200] as const;

function Piston({ model }: { readonly model: HoldingModel }) {
  const print = printer(useUnits());
  const { pressure: kpa, area: cm2 } = model.build.value;
  const force = model.force.value;
  const full = FORCE_SCALES.find((scale) => force.oil <= scale) ?? FORCE_SCALES[1];
  const state: PistonSpringState = {
    pressure: kpa / FULL_SCALE,
    force,
    fullForce: full,
    labels: {
      pressure: print(kpa, pressure),
      area: print(cm2, area),
      oil: print(force.oil, newtons),
      spring: print(force.spring, newtons),
      net: print(force.net, newtons),
      short: print(Math.max(0, force.spring - force.oil), newtons),
    },
  };
  return (
    <figure class="holding-figure">
      <figcaption>
        <strong>{words.piston.lead}</strong> {words.piston.rest}
      </figcaption>
      <PistonSpringDrawing id="holding-torque-piston" state={state} />
      <More label={words.inWords}>
        <p>{describePistonSpring(state)}</p>
      </More>
    </figure>
  );
}

function Pack({ model }: { readonly model: HoldingModel }) {
  const print = printer(useUnits());
  const { torque: has, holds, build, force } = model;
  const kpa = build.value.pressure;
  const state: ClutchPackState = {
    pressure: kpa / FULL_SCALE,
    // The piston leaves its seat once the oil beats the spring.
    travel: force.value.net > 0 ? 1 : 0,
    holds: holds.value,
    labels: { pressure: print(kpa, pressure), torque: print(has.value, torque) },
  };
  const { neither, stands, both } = words.pack;
  const able =
    has.value < needed.idle.torqueNm
      ? neither
      : has.value < needed['take-off'].torqueNm
        ? stands
        : both;
  return (
    <figure class="holding-figure">
      <figcaption>
        <strong>{words.pack.lead}</strong> {words.pack.rest}
      </figcaption>
      <ClutchPackDrawing id="holding-torque-pack" state={state} />
      <dl class="readouts">
        <Readout label={words.pack.carries} value={has.value} quantity={torque}>
          {able}
        </Readout>
      </dl>
      <More label={words.inWords}>
        <p>{describeClutchPack(state)}</p>
      </More>
    </figure>
  );
}

/**
 * Three worked examples from two textbooks, each beside what the engine makes of the same sizes.
 * The example heads its own row of two numbers: beside them, a phone would leave it one word wide.
 */
function Books({ model }: { readonly model: HoldingModel }) {
  const system = useUnits();
  const chosen = model.givens.example.value;
  return (
    <figure class="holding-books">
      <figcaption>
        <strong>{words.books.lead}</strong> {words.books.rest}
      </figcaption>
      <table aria-label={words.books.name}>
        <thead>
          <tr>
            <th scope="col">{words.books.book}</th>
            <th scope="col">{words.books.model}</th>
          </tr>
        </thead>
        {BOOKS.map((book) => (
          <tbody key={book} aria-current={chosen === book ? 'true' : undefined}>
            <tr>
              <th scope="rowgroup" colSpan={2}>
                {words.books[book].full}. <span class="holding-how">{howOf(book, system)}</span>
              </th>
            </tr>
            <tr>
              <td>{bookNumber(book, 'book', system)}</td>
              <td>{bookNumber(book, 'model', system)}</td>
            </tr>
          </tbody>
        ))}
      </table>
    </figure>
  );
}
