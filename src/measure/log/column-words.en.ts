import { words as names } from '../../car/words.en.ts';
import type { LogRange, LogUnit, Role } from '../../log/roles.ts';

const roles: Record<Role, string> = {
  time: 'Time',
  engine: 'Engine speed',
  turbine: 'Turbine speed',
  output: 'Output shaft speed',
  range: 'Range selected',
  gear: 'Gear',
  temperature: 'Fluid temperature',
  brake: 'Brake',
  throttle: 'Throttle',
  roadSpeed: 'Road speed',
  clutchPressure: 'Clutch pressure, or its command',
  linePressure: 'Line pressure, or its command',
};
const ranges: Record<LogRange, string> = names.ranges;
const units: Record<LogUnit, string> = {
  s: 's',
  ms: 'ms',
  rpm: 'rpm',
  '°C': '°C',
  '°F': '°F',
  '%': '%',
  'km/h': 'km/h',
  mph: 'mph',
  kPa: 'kPa',
  psi: 'psi',
  bar: 'bar',
};

/** The part in which a reader of the page says which column is what. */
export const words = {
  title: 'Which column is what',
  found: (p: { rows: string; columns: string; name: string }) =>
    `${p.name}: ${p.rows} rows of ${p.columns} columns.`,
  skipped: (rows: string): string =>
    rows === '1'
      ? '1 more row holds no readings and is left out.'
      : `${rows} more rows hold no readings and are left out.`,
  guessed: 'Filled in from the header. Look it over, and change what is wrong.',
  remembered: 'Filled in as you had it the last time for a file with this header.',
  notKept: 'This browser keeps nothing for this site, so next time you will have to choose again.',
  roles,
  ranges,
  units,
  needed: 'needed',
  none: 'not in this log',
  column: (number: string) => `Column ${number}`,
  unitOf: (role: string) => `Unit: ${role}`,
  sample: (values: string) => `begins ${values}`,
  noSample: 'begins with no reading',
  rangesTitle: 'What the range column says',
  rangesHow:
    'Each tool has its own words or numbers. An engagement begins where Park or Neutral ends.',
  noRange: 'no range',
  choices: 'The columns and their units',
  onward: 'On to what the log shows',
  layout: 'How the file is laid out',
  separator: 'Between the columns',
  separators: { ';': 'semicolon', '\t': 'tab', ',': 'comma' },
  decimalMark: 'Decimal mark',
  decimalMarks: { '.': 'point', ',': 'comma' },
  readAs: (unit: string) => `Read it as ${unit}`,
  troubles: {
    missingTime: 'Which column is the time? Without it nothing can be measured.',
    missingTurbine:
      'Which column is the turbine speed, also called input speed? Without it a log shows neither the stop nor slip. If your file has none, record it again with that item on the list.',
    missing: 'This column is not in the file.',
    noNumbers: 'There is not one number in this column. Choose another.',
    taken: (other: string) =>
      `This is the same column as “${other}”. Each column can be one thing only.`,
    runsBack: (p: { row: string; from: string; to: string }) =>
      `Time runs back in row ${p.row} of the file, from ${p.from} to ${p.to}. Two logs in one file? Cut it there and read each by itself; or this is not the time.`,
    standsStill:
      'Time hardly moves from row to row here. Is this the time? It has to rise, with tenths of a second or finer.',
    hertz: (most: string) =>
      `This never goes over ${most}. Is this in Hz? Speeds have to be in rpm here.`,
    fahrenheit: (p: { most: string; us: string }) =>
      `${p.most} would be ${p.us}, hotter than any transmission that still drives. Is the column in °F?`,
    milliseconds: (step: string) => `From row to row this rises by ${step}. Is it in ms?`,
    seconds: (step: string) => `From row to row this rises by ${step}. Is it in s?`,
    pressureUnit: (most: string) => `The most here is ${most}. Is that the right unit of pressure?`,
    noRanges:
      'Nothing here stands for Park or Neutral yet. Say below what its words or numbers mean; until then engagements are looked for in the turbine speed.',
  },
};
