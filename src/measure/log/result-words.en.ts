import { words as names } from '../../car/words.en.ts';
import type { Band } from '../../log/readings.ts';

type At = { range: string; temp: string };
const bands: Record<Band | 'between' | 'unknown', string> = {
  frost: 'Frost',
  cold: 'Cold',
  hot: 'Hot',
  between: 'Between',
  unknown: 'No temperature',
};

/** What is said of a log once it is read. */
export const words = {
  findings: 'What the log shows',
  doubt: (column: string) => `Answer this first. ${column}:`,
  findingsHow: 'Press a finding to see the place it comes from.',
  showAll: (count: string) => `Show all ${count} findings`,
  firstOf: (shown: string, all: string) =>
    `${shown} of ${all} engagements. Show all findings above, and all of them come up here.`,
  nothing: 'No engagement and no sign of a bad sensor was found in this log.',
  bands,
  ranges: { ...names.ranges, unknown: 'Range not in the log' },
  at: ({ range, temp }: At) => `${range} at ${temp}`,
  atUnknown: (range: string) => `${range}, temperature not in the log`,
  stopped: (p: { where: string; low: string; high: string; middle: string }) =>
    `${p.where}: the turbine stops ${p.low} to ${p.high} after selection, ${p.middle} in the middle.`,
  fell: (p: { where: string; low: string; high: string; middle: string }) =>
    `${p.where}: the turbine takes ${p.low} to ${p.high} from the start of its fall until it stops, ${p.middle} in the middle. Selection came before that, and how long before is not in the log.`,
  notStopped: (p: { where: string; watched: string; lowest: string }) =>
    `${p.where}: the turbine does not stop. In ${p.watched} in gear it never reads under ${p.lowest}.`,
  cutShort: (p: { where: string; watched: string }) =>
    `${p.where}: the turbine still turned when the vehicle moved or the log broke off, ${p.watched} after selection. Too early to say whether it would have stopped.`,
  notFromRest: (where: string) =>
    `${where}: the turbine stood already, or the vehicle rolled, when the range was selected. No time to stop.`,
  lateCheck: (p: { where: string; slip: string; limit: string; after: string }) =>
    `${p.where}: ${p.after} after selection it still shows ${p.slip} of slip. The controller of this site calls that “engagement not finished” from ${p.limit} on.`,
  slip: (p: { where: string; peak: string; high: string }) =>
    `${p.where}: slip on take-off reaches ${p.peak}, and between two readings perhaps ${p.high}.`,
  slipExact: (p: { where: string; peak: string }) =>
    `${p.where}: slip on take-off reaches ${p.peak}.`,
  ratioCheck: (p: { where: string; slip: string; limit: string; after: string; held: string }) =>
    `${p.where}: ${p.after} after selection slip has been over its limit for ${p.held} (${p.slip}, limit ${p.limit}). The controller of this site would raise the pressure.`,
  code: (p: { where: string; code: string; after: string }) =>
    `${p.where}: ${p.after} after selection it would store ${p.code}, wrong ratio, and let go.`,
  laterHot: (p: { range: string; cold: string; hot: string }) =>
    `${p.range} is slower hot than cold: it stops after ${p.hot}, and after ${p.cold} cold. A leak does that, and thin fluid helps it.`,
  laterCold: (p: { range: string; cold: string; hot: string }) =>
    `${p.range} is slower cold than hot: it stops after ${p.cold}, and after ${p.hot} hot. Thick fluid alone does some of that; a hard seal lip or a tight filter more.`,
  alike: (p: { range: string; cold: string; hot: string }) =>
    `${p.range} takes as long cold as hot, as far as this log can tell: ${p.cold} cold, ${p.hot} hot.`,
  onlyHot: (p: { range: string; cold: string }) =>
    `${p.range} takes hold cold, after ${p.cold}, and does not hot. Something leaks that thick fluid hides, or the command fades: the pressures will tell.`,
  onlyCold: (p: { range: string; hot: string }) =>
    `${p.range} takes hold hot, after ${p.hot}, and does not cold.`,
  neither: (p: { range: string }) =>
    `${p.range} does not stop the turbine, cold or hot. Prove the turbine sensor first, then the pressures.`,
  between: (low: string, high: string) => `${low} to ${high}`,
  floor: (rpm: string) =>
    `The turbine never reads under ${rpm}, standing in gear either, yet it agrees with the output shaft on the road. Check its sensor before you call this slip: engine off, key on, it has to read zero.`,
  turbineDropouts: (times: string): string =>
    times === '1'
      ? 'Turbine speed drops out for a single reading on the road. A shaft cannot do that: sensor, plug or wire.'
      : `Turbine speed drops out for a single reading on the road, ${times} times. A shaft cannot do that: sensor, plug or wire.`,
  outputDropouts: (times: string): string =>
    times === '1'
      ? 'Output speed drops out for a single reading on the road. A shaft cannot do that: sensor, plug or wire.'
      : `Output speed drops out for a single reading on the road, ${times} times. A shaft cannot do that: sensor, plug or wire.`,

  blind: 'What this log cannot show',
  blindNothing: 'Nothing is missing that this page looks for.',
  cannot: {
    noRange:
      'When a range was selected: there is no range column. The time from the start of the turbine’s fall is shorter than the time to stop, so it is no reading for diagnosis.',
    noTemperature:
      'What temperature does: at least one engagement has no fluid temperature. Once a second is enough.',
    noOutput:
      'Slip on the road: there is no output speed. Only the stop of the turbine can be seen.',
    noBrake:
      'When the brake let go: there is no brake column. The take-off is taken to begin with the throttle, or else when the vehicle moves.',
    noEngagement:
      'An engagement: no range is selected from Park or Neutral here, and no turbine falls while the vehicle stands.',
    noTakeoff: 'A take-off: no engagement is followed by enough driving to read slip from.',
    slow: (p: { step: string; rate: string }) =>
      `Quick events: turbine speed comes only every ${p.step}, which is ${p.rate} readings a second. A stop is known no better than that. Log fewer items, so that each comes every 0.1 s or faster.`,
    tooSlow: (p: { step: string; held: string }) =>
      `Short slip: with ${p.step} between readings nobody can say that slip lasted ${p.held}, so the ratio check is left out.`,
    gaps: (p: { count: string; longest: string }): string =>
      p.count === '1'
        ? `What happened while the log stood still, ${p.longest} long.`
        : `What happened in ${p.count} stretches without readings, the longest ${p.longest} long.`,
    doubled: (rows: string) =>
      `Rows with the time of the row before: ${rows} left out. The tool writes time too coarsely for its rate.`,
    untimed: (rows: string) => `Rows without a time: ${rows} left out.`,
    skipped: (p: { count: string; row: string }): string =>
      p.count === '1'
        ? `Row ${p.row} of the file: it is no row of readings and is left out.`
        : `${p.count} rows of the file, the first of them row ${p.row}: they are no rows of readings and are left out.`,
    short: (p: { count: string; row: string }): string =>
      p.count === '1'
        ? `The end of row ${p.row} of the file: it is cut short. What it has is read.`
        : `The ends of ${p.count} rows, the first of them row ${p.row} of the file: they are cut short. What they have is read.`,
    unread: (p: { column: string; count: string; row: string; saying: string }): string =>
      p.count === '1'
        ? `${p.column} in row ${p.row} of the file: “${p.saying}” is no number and counts as no reading.`
        : `${p.column} in ${p.count} rows, the first of them row ${p.row} of the file: “${p.saying}” is no number and counts as no reading.`,
  },

  coldHot: 'Cold beside hot',
  which: 'Range',
  oneTemperature:
    'All engagements in this range are at about one temperature. Log the same thing again, cold or hot, to lay the two side by side.',
  turbineChart: 'Turbine speed after selection',
  slipChart: 'Slip after selection',
  sinceSelection: 'Time after selection',
  turbineAxis: 'Turbine speed',
  slipAxis: 'Slip',
  turbineTakeaway: (p: { cold: string; hot: string }) => `Cold: ${p.cold} Hot: ${p.hot}`,
  standsAfter: (p: { low: string; high: string }) => `It stops after ${p.low} to ${p.high}.`,
  standsNot: 'It does not stop.',
  standsUnknown: 'It was not watched for long enough.',
  slipTakeaway: (p: { cold: string; hot: string }) =>
    `On take-off up to ${p.cold} cold and ${p.hot} hot.`,
  slipTakeawayNone: 'No take-off to read slip from in one of the two.',
  markStands: (p: { low: string; high: string }) => `stops after ${p.low} to ${p.high}`,
  coldLine: (temp: string) => `cold, ${temp}`,
  hotLine: (temp: string) => `hot, ${temp}`,
  coolerLine: (temp: string) => `cooler, ${temp}`,
  warmerLine: (temp: string) => `warmer, ${temp}`,

  place: 'The place in the log',
  placeHow: 'Press a finding or a row of the table above, and the readings round it come up here.',
  traceName: (where: string) => `Readings round the selection: ${where}`,
  traceAlone: (time: string) => `Readings round ${time} into the log`,
  traceTakeaway: (time: string) => `The cursor is at ${time}.`,
  logTime: 'Time of the log',
  speedAxis: 'Speed',
  engineLine: 'engine',
  turbineLine: 'turbine',
  outputLine: 'output',
  pressureChart: 'Pressure at the same place',
  pressureAxis: 'Pressure',
  pressureTakeaway: 'What the log has of pressure, measured or commanded, on the same time.',
  clutchLine: 'clutch',
  lineLine: 'line',
  controller: 'The site’s controller',
  fetching: 'Fetching the readings …',
  backToFinding: 'Back to the finding',

  engagements: 'Every engagement',
  engagementsTable: 'Table of engagements',
  columns: {
    where: 'In the log at',
    range: 'Range',
    temp: 'Fluid',
    group: 'Group',
    stop: 'Turbine stops after',
    slip: 'Slip on take-off',
    show: 'Place',
  },
  show: 'Show',
  showLong: (where: string) => `Show the place: ${where}`,
  notRead: 'not read',
  notInTime: (limit: string) => `not in ${limit}`,
  upTo: (peak: string, high: string) => `${peak}, perhaps ${high}`,

  ratios: 'Which ratios slip is reckoned with',
  sources: {
    training: 'The training transmission',
    own: 'My own',
    log: 'Estimated from this log',
  },
  firstGear: 'First gear, turbine turns for one of the output',
  reverseGear: 'Reverse, turbine turns for one of the output',
  inForce: (p: { drive: string; reverse: string }) =>
    `Slip is turbine speed less ratio times output speed, here with ${p.drive} in Drive and ${p.reverse} in Reverse.`,
  firstOnly:
    'The ratio is that of the gear each range begins in. A take-off counts until the gear changes.',
  gears: 'Ratios this log shows when driving steadily',
  noGears:
    'There is not enough steady driving with both speeds in this log to estimate a ratio from. Two seconds in one gear would do.',
  gearColumns: {
    range: 'Range',
    ratio: 'Ratio',
    spread: 'Eight in ten readings',
    seconds: 'Rests on',
  },
  gearsCaution:
    'A clutch that slips evenly for seconds makes a ratio too high. Compare with the maker’s.',
  noSuchRatio: (range: string) => `None for ${range} here; the training transmission’s stands in.`,

  job: {
    which: 'Which job',
    fresh: 'A new job',
    label: (date: string) => `Log of ${date}`,
    another: (p: { label: string; count: string }) => `${p.label}, no. ${p.count}`,
    put: 'Put these into a job',
    already: (label: string) => `Already in “${label}”.`,
    nothingTwice: (label: string) => `Already in “${label}”. Nothing was put in a second time.`,
    some: (p: { here: string; of: string; label: string }) =>
      `${p.here} of these ${p.of} readings already ${p.here === '1' ? 'stands' : 'stand'} in “${p.label}”.`,
    theRest: 'Choose that job, and only the rest is added.',
    added: (p: { added: string; before: string }) =>
      `${p.added === '1' ? '1 reading' : `${p.added} readings`} added; ${p.before} stood there already.`,
    onceMore: 'Make another new job of them',
    done: (count: string): string =>
      count === '1' ? '1 reading stands in the job.' : `${count} readings stand in the job.`,
    open: (label: string) => `Open “${label}”`,
    failed:
      'They could not be kept: this browser has no room left, keeps nothing for this site, or another tab holds the job sheets. Copy the readings below instead.',
  },
  readings: 'Readings for diagnosis',
  readingsHow:
    'The middle of each time, the largest reading of slip, with range and temperature. Put them into a job sheet, and what they say about the car stands there.',
  noReadings:
    'None yet. A reading needs a range selected in the log and a fluid temperature in frost, cold or hot, as in the table above.',
  bandsHow: (p: { frost: string; cold: string; hot: string }) =>
    `Frost is ${p.frost}, cold ${p.cold}, hot ${p.hot}. Readings between them are shown, and not handed on.`,
  asText: 'The readings as text, for another program',
  copy: 'Copy the readings',
  copied: 'Copied.',
  copyByHand:
    'The browser does not let a page copy here. They are selected below: copy them by hand.',
  readingsLabel: 'Readings as text',
  limits:
    'Limits here are those of the training transmission’s controller. The maker’s figures come first.',
};
