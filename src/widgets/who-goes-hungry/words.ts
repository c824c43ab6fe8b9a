import { format, printer } from '../../quantity/print.ts';
import { flow, percent, pressure, speed } from '../../quantity/quantities.ts';
import type { UnitSystem } from '../../quantity/unit-system.ts';
import { COMMANDS, clutchWord, type FedFrom, type HungryModel, type Reading } from './model.ts';

/** Less than this share of what a healthy transmission leaves at the same speed and temperature counts as hungry. */
export const HUNGRY_SHARE = 0.5;

/** Drops, which no cooler lives on: less than this counts as nothing [L/min]. */
export const NOTHING = 0.02;

/** Everybody who eats from the pump, in the order in which they lose their share. */
export const EATERS = ['leftOver', 'line', 'clutch'] as const;
export type Eater = (typeof EATERS)[number];
export const eaterNames: Readonly<Record<Eater, string>> = {
  leftOver: 'Converter, cooler, lubrication',
  line: 'The line',
  clutch: 'The forward clutch',
};
/** fed: has its share; short: less than that; hungry: nothing, or not enough for its work. */
export type Fed = 'fed' | 'short' | 'hungry';

export function fedWords(now: Reading, sound: Reading): Readonly<Record<Eater, Fed>> {
  const { leftOver } = now.flows;
  const clutch = clutchWord(now.clutch);
  return {
    leftOver:
      leftOver < NOTHING
        ? 'hungry'
        : leftOver < HUNGRY_SHARE * sound.flows.leftOver
          ? 'short'
          : 'fed',
    line: now.lineAtCommand ? 'fed' : now.line < COMMANDS.clutch ? 'hungry' : 'short',
    clutch: clutch === 'takes off' ? 'fed' : clutch === 'stands' ? 'short' : 'hungry',
  };
}

export const clutchWords: Readonly<Record<ReturnType<typeof clutchWord>, string>> = {
  'takes off': 'still enough to take off',
  stands: 'enough to stand in gear, too little to take off',
  slips: 'too little even to stand in gear',
};

/** Whether the filter holds the pump back here, and by how much. */
export const starved = ({ flows }: Reading): boolean => flows.intake < flows.full * (1 - 1e-9);

/** The sentence under the picture: who is hungry, in order. */
export function says(model: HungryModel, system: UnitSystem): string {
  const { now, sound } = model;
  const print = printer(system);
  const { line, clutch, flows } = now.value;
  const left = print(flows.leftOver, flow);
  const draws = starved(now.value)
    ? `The filter lets in ${print(flows.intake, flow)} of the ${print(flows.full, flow)} the pump could move. `
    : '';
  if (now.value.lineAtCommand) {
    const share = fedWords(now.value, sound.value).leftOver;
    const tail =
      share === 'hungry'
        ? 'Converter, cooler and lubrication get next to nothing. The line is about to fall.'
        : share === 'short'
          ? `Converter, cooler and lubrication are short: ${left}, where a healthy transmission leaves them ${print(sound.value.flows.leftOver, flow)}.`
          : `Nobody is hungry: ${left} is left for converter, cooler and lubrication.`;
    return `${draws}Line at its command, ${print(line, pressure)}. ${tail}`;
  }
  const share = format((100 * clutch) / COMMANDS.clutch, percent, system);
  return `${draws}Converter, cooler and lubrication get nothing. Line down to ${print(line, pressure)}. Clutch ${print(clutch, pressure)} (${share} of command), ${clutchWords[model.clutchIs.value]}.`;
}

export function fedFromWords(from: FedFrom, system: UnitSystem): string {
  switch (from.kind) {
    case 'always':
      return 'The line has its command at every speed offered.';
    case 'never':
      return 'No speed offered brings the line to its command.';
    case 'at':
      return `The line has its command from ${format(from.rpm, speed, system)} up.`;
  }
}
