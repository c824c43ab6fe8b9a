import type { LiveCar } from '../../car/live-cars.ts';
import type { Item } from './model.ts';

interface Between {
  low: string;
  high: string;
}
interface Printed {
  first: string;
  low: string;
  high: string;
  half: string;
  quick: string;
  slow: string;
}
export const words = {
  title: 'What is between the rows?',
  items: {
    range: 'Range',
    turbine: 'Turbine speed',
    temperature: 'Fluid temperature',
    output: 'Output speed',
    command: 'Clutch pressure command',
    engine: 'Engine speed',
    throttle: 'Throttle',
    brake: 'Brake pedal',
    gear: 'Commanded gear',
    voltage: 'Battery voltage',
  } satisfies Record<Item, string>,
  cars: {
    hot: (p: { temp: string }) => `Healthy, ${p.temp}`,
    cold: (p: { temp: string }) => `Healthy, ${p.temp}`,
    frost: (p: { temp: string }) => `Healthy, ${p.temp}`,
    crack16: (p: { temp: string; crack: string }) => `Crack ${p.crack}, ${p.temp}`,
    friction: (p: { temp: string }) => `Worn plates, ${p.temp}`,
    crack25: (p: { temp: string; crack: string }) => `Crack ${p.crack}, ${p.temp}`,
    plug: (p: { temp: string }) => `Healthy, ${p.temp}, sensor drops out`,
    shudder: (p: { temp: string }) => `Shudders as it pulls away, ${p.temp}`,
  } satisfies Record<LiveCar, unknown>,
  controls: {
    line: 'Values a second on the line',
    car: 'The car',
    late: 'Drive selected, on the way to the next row',
    truth: 'What was between the rows',
    shown: 'shown',
    hidden: 'not shown',
    on: 'on the list',
    off: 'not on the list',
  },
  chart: {
    name: 'Turbine speed',
    time: 'Time in the log',
    log: 'log',
    takeaway: (p: { items: string; line: string; every: string }) =>
      `${p.items} items share ${p.line} values a second: a row every ${p.every}.`,
    nothing: 'The turbine is not on the list.',
    selected: 'Drive',
    stopped: 'stops',
  },
  predict: {
    question: (p: { first: string }) =>
      `Ten items share 20 values a second. In the log the turbine stands ${p.first} after the first row in Drive. How long did it take, from selecting Drive?`,
    options: {
      exact: {
        words: (p: Printed) => `${p.first}, as the log has it`,
        why: (p: Printed) =>
          `The rows say when it was looked at. Drive was selected somewhere before its first row, and the turbine came to a stop somewhere before that last one: ${p.quick} and ${p.slow} both fit.`,
      },
      half: {
        words: (p: Printed) => `${p.first}, give or take ${p.half}`,
        why: (p: Printed) =>
          `That takes in one end. But both ends fell between two rows, the selecting and the stopping, and each can be off by a whole step. It is from ${p.low} to ${p.high}.`,
      },
      both: {
        words: (p: Printed) => `Anything from ${p.low} to ${p.high}`,
        why: (p: Printed) =>
          `Both ends fell between two rows. A healthy car that took ${p.quick} fits, and so does one with worn plates that took ${p.slow}.`,
      },
    },
    runLabel: 'Show what happened',
  },
  outcome: (p: Printed & { cars: string }) =>
    `Anything from ${p.low} to ${p.high} fits. ${p.cars} of our cars write these same rows: the quickest stood after ${p.quick}, the slowest after ${p.slow}.`,
  says: {
    noTurbine: 'Without turbine speed there is nothing to see of the clutch.',
    noRange: 'Without the range nobody knows when Drive was selected. The stop has no time.',
    stop: (p: Between) => `By its rows it stopped ${p.low} to ${p.high} after Drive.`,
    never: (p: { watched: string; lowest: string }) =>
      `Not stopped ${p.watched} after Drive; lowest reading ${p.lowest}.`,
    dropout: 'It reads zero and comes back: sensor or plug.',
    fits: (p: { fits: string; all: string }) => `${p.fits} of ${p.all} cars can write these rows.`,
    swings: (p: { seen: string; swings: string }) =>
      `The turbine swings ${p.swings} times a second. These rows draw ${p.seen}.`,
    flat: (p: { swings: string }) =>
      `The turbine swings ${p.swings} times a second. These rows draw no swing at all.`,
  },
};
