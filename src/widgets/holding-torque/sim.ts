import { formatNumber, printer } from '../../quantity/print.ts';
import { area, dimension, force, friction } from '../../quantity/part-quantities.ts';
import { count, percent, power, pressure, speed, torque } from '../../quantity/quantities.ts';
import { numberControl } from '../../simulation/choices/number.ts';
import { requiredControl } from '../../simulation/required/control.ts';
import type { SimSpec } from '../../simulation/sim-spec.ts';
import { told, withIds } from '../../simulation/told.ts';
import { bookNumber, BOOKS, books, powerOf } from './books.ts';
import type { HoldingGivens, HoldingModel } from './model.ts';
import { before, DUST, facts, FULL, HALF, needIn } from './facts.ts';
import { words } from './words.en.ts';

/** Wide enough for three textbook clutches beside the training one. */
export const PRESSURE = { min: 0, max: 1200, step: 1 } as const;
/** Steel on iron in oil 0.03 up to dry lining 0.3 (R. C. Juvinall and K. M. Marshek, ch. 18, table of friction coefficients). */
export const FRICTION = { min: 0.03, max: 0.3, step: 0.01 } as const;
const FACES = { min: 1, max: 16, step: 1 } as const;
/** [cm²] */
const AREA = { min: 20, max: 260, step: 1 } as const;
/** [mm] */
const RADIUS = { min: 30, max: 120, step: 1 } as const;
/** [N] */
const SPRING = { min: 0, max: 2500, step: 50 } as const;
/** Full height of the torque axis [N m]: the training clutch at 1200 kPa. Fixed, so that change is seen as change. */
export const FULL_TORQUE = 800;

const { controls, linings, rubbing, says } = words;
const faces = { ...count, name: controls.faces };
const plates = (n: number): string => {
  if (n === 1) return rubbing.oneSide;
  if (n === 2) return rubbing.onePlate;
  return n % 2 === 0 ? rubbing.plates({ plates: formatNumber(n / 2, count, 'si') }) : '';
};
const lining = (value: number): string =>
  value < 0.095 ? linings.worn : value <= 0.145 ? linings.paper : linings.dry;

const { options, ...predict } = told(words.predict, facts);
export const start = { example: 'training', required: 'take-off', pressure: FULL } as const;

export const sim: SimSpec<HoldingGivens, HoldingModel> = {
  id: 'holding-torque',
  title: words.title,
  linkVersion: 1,
  controls: [
    numberControl('pressure', controls.pressure, pressure, PRESSURE),
    numberControl('friction', controls.friction, friction, FRICTION, lining),
    numberControl('faces', controls.faces, faces, FACES, plates),
    {
      kind: 'choice',
      key: 'example',
      label: controls.example,
      as: 'select',
      options: [
        { value: 'training', words: words.examples.training },
        ...BOOKS.map((value) => ({
          value,
          words: words.examples.book({ book: words.books[value].short }),
        })),
        { value: 'own', words: words.examples.own },
      ],
    },
    requiredControl('required'),
    numberControl('area', controls.area, area, AREA),
    numberControl('radius', controls.radius, dimension, RADIUS),
    numberControl('spring', controls.spring, force, SPRING),
  ],
  predict: {
    ...predict,
    options: withIds(options),
    start,
    end: { pressure: HALF },
    outcome: ({ torque: has }) => {
      const share = has.value / before;
      return {
        option: Math.abs(share - 0.5) < DUST ? 'half' : share < 0.5 ? 'less' : 'more',
        words: (system) => {
          const print = printer(system);
          return words.outcome({
            before: print(before, torque),
            after: print(has.value, torque),
            share: print(100 * share, percent),
          });
        },
      };
    },
  },
  says: (model, system, inTask) => {
    const print = printer(system);
    const { build, torque: held, holds, needPressure, springPressure, givens } = model;
    const has = print(held.value, torque);
    const example = givens.example.value;
    if (example !== 'own' && example !== 'training') {
      const { prints } = books[example];
      const said = {
        book: words.books[example].short,
        has,
        printed: bookNumber(example, 'book', system),
      };
      if (prints.kind === 'torque') return says.book(said);
      return says.bookPower({
        ...said,
        speed: print(prints.rpm, speed),
        power: print(powerOf(held.value, prints.rpm), power),
      });
    }
    if (held.value === 0) {
      return says.nothing({
        pressure: print(build.value.pressure, pressure),
        springPressure: print(springPressure.value, pressure),
      });
    }
    const required = givens.required.value;
    const verdict = !holds.value
      ? says.slips
      : held.value > FULL_TORQUE
        ? says.offChart
        : says.holds;
    const sentences = [verdict({ has }), says.needed[required](needIn(required, system))];
    if (!inTask) sentences.push(says.gauge({ pressure: print(needPressure.value, pressure) }));
    return sentences.join(' ');
  },
};
