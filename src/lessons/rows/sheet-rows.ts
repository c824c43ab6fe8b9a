import { words as car } from '../../car/words.en.ts';
import {
  CIRCUITS,
  GEARS,
  SHEET_FIELDS,
  clutchOnSheet,
  fluidClasses,
  secondSheet,
  trainingSheet,
} from '../../engine/index.ts';
import type { Allowed, Gear, TransmissionSheet } from '../../engine/index.ts';
import { shownNumber, shownUnit } from './row-values.ts';
import { words } from './words.en.ts';

/** A key of the sheet, what it is, what it may be, and what the two invented transmissions have there. */
export interface SheetRow {
  readonly key: string;
  readonly what: string;
  readonly range: string;
  readonly training: string;
  readonly second: string;
}

type Fields = Readonly<Record<string, Allowed | Readonly<Record<string, Allowed>>>>;

function rowsOf(fields: Fields, training: object, second: object, path = ''): SheetRow[] {
  return Object.entries(fields).flatMap(([key, field]): SheetRow[] => {
    const here = path === '' ? key : `${path}.${key}`;
    const [one, other] = [training, second].map(
      (sheet) => (sheet as Readonly<Record<string, number | object>>)[key],
    );
    if (!isField(field)) return rowsOf(field, one as object, other as object, here);
    const unit = shownUnit(field.unit);
    return [
      {
        key: here,
        what: field.name,
        range: words.range({
          min: shownNumber(field.min),
          max: `${shownNumber(field.max)}${unit === '' ? '' : ` ${unit}`}`,
        }),
        training: shownNumber(one as number),
        second: shownNumber(other as number),
      },
    ];
  });
}
const isField = (entry: Fields[string]): entry is Allowed => typeof entry.unit === 'string';

const list = (names: readonly string[]): string => names.join(', ');

/** Where a circuit's clutch differs from the one that all share. */
function ownClutches(sheet: TransmissionSheet): string {
  const own = CIRCUITS.flatMap((circuit) => {
    const { [circuit]: differs } = sheet.clutches;
    if (differs === undefined) return [];
    const clutch = clutchOnSheet(sheet, circuit);
    const keys = Object.keys(differs) as (keyof typeof clutch)[];
    return [`${circuit}: ${list(keys.map((key) => `${key} ${shownNumber(clutch[key])}`))}`];
  });
  return own.length === 0 ? words.none : own.join('; ');
}

const wordRow = (
  key: string,
  what: string,
  range: string,
  of: (sheet: TransmissionSheet) => string,
): SheetRow => ({ key, what, range, training: of(trainingSheet), second: of(secondSheet) });

export const sheetRows: readonly SheetRow[] = [
  wordRow('name', words.sheetName, words.sheetNameRange, ({ name }) => name),
  ...rowsOf(SHEET_FIELDS, trainingSheet, secondSheet),
  wordRow('seal.circuits', words.sealCircuits, list(CIRCUITS), ({ seal }) => list(seal.circuits)),
  wordRow('clutches', words.ownClutches, words.ownClutchesRange, ownClutches),
  wordRow(
    'fluid',
    words.fluid,
    words.fluidRange({ classes: list(Object.keys(fluidClasses)) }),
    ({ fluid }) => (typeof fluid === 'string' ? fluid : words.ownFluid),
  ),
  wordRow('applyChart', words.applyChart, words.applyChartRange, ({ applyChart }) =>
    GEARS.map((gear) => `${gear}: ${list(applyChart[gear])}`).join('; '),
  ),
];

const applied = (sheet: TransmissionSheet, gear: Gear): string =>
  list(sheet.applyChart[gear].map((circuit) => car.clutches[circuit]));

/** Which clutches are under pressure in each gear. */
export const applyRows = GEARS.map((gear) => ({
  gear: gear === 'R' ? car.ranges.reverse : words.gears[gear],
  training: applied(trainingSheet, gear),
  second: applied(secondSheet, gear),
}));
