import { illustrativeSettings } from '../../engine/controller/settings.ts';
import type { EngagementRead } from '../../log/measure.ts';
import type { LogRead } from '../../log/analyse.ts';
import type { LeftOut } from '../../log/left-out.ts';
import { middle, type Interval } from '../../log/stop-time.ts';
import { formatNumber, printer } from '../../quantity/print.ts';
import { count, minutes, rate, seconds, speed, temperature } from './quantities.ts';
import type { UnitSystem } from '../../quantity/unit-system.ts';
import type { Place } from './model.ts';
import { coldAndHot, type Pair } from './pairs.ts';
import { words as columns } from './column-words.en.ts';
import { words } from './result-words.en.ts';

export interface Finding {
  readonly text: string;
  readonly place: Place;
}

/** "0.70 to 0.82 s": the unit once. */
export const printInterval = ({ low, high }: Interval): string =>
  words.between(formatNumber(low, seconds, 'si'), printer('si')(high, seconds));

export function whereOf({ selection, tempC }: EngagementRead, system: UnitSystem): string {
  const range = words.ranges[selection.range];
  return tempC === null
    ? words.atUnknown(range)
    : words.at({ range, temp: printer(system)(tempC, temperature) });
}

function ofStop(read: EngagementRead, where: string, print: ReturnType<typeof printer>): string {
  const { stop, selection } = read;
  switch (stop.kind) {
    case 'stopped': {
      const p = {
        where,
        low: formatNumber(stop.after.low, seconds, 'si'),
        high: print(stop.after.high, seconds),
        middle: print(middle(stop.after), seconds),
      };
      return selection.by === 'range' ? words.stopped(p) : words.fell(p);
    }
    case 'notStopped':
      return words.notStopped({
        where,
        watched: print(stop.watched, seconds),
        lowest: print(stop.lowest, speed),
      });
    case 'cutShort':
      return words.cutShort({ where, watched: print(stop.watched, seconds) });
    case 'notFromRest':
      return words.notFromRest(where);
  }
}

function ofController(read: EngagementRead, where: string, print: ReturnType<typeof printer>) {
  const found: { text: string; at: number }[] = [];
  for (const { time, event, code, slipRpm = 0, limitRpm = 0 } of read.watched.events) {
    const after = print(time - read.at, seconds);
    const [slip, limit] = [print(slipRpm, speed), print(limitRpm, speed)];
    if (event === 'engagement not finished') {
      found.push({ text: words.lateCheck({ where, slip, limit, after }), at: time });
    }
    if (read.tooSlowForRatio) continue;
    if (event === 'pressure raised') {
      const held = print(illustrativeSettings.ratioTime, seconds);
      found.push({ text: words.ratioCheck({ where, slip, limit, after, held }), at: time });
    }
    if (event === 'code stored' && code !== undefined) {
      found.push({ text: words.code({ where, code, after }), at: time });
    }
  }
  return found;
}

/** Two times differ when no time lies in both intervals. */
function ofPair({ cold, hot, range }: Pair): string | null {
  const name = words.ranges[range];
  const [a, b] = [cold.read.stop, hot.read.stop];
  const stands = a.kind === 'stopped' && printInterval(a.after);
  const standsHot = b.kind === 'stopped' && printInterval(b.after);
  if (a.kind === 'stopped' && b.kind === 'stopped' && stands && standsHot) {
    const p = { range: name, cold: stands, hot: standsHot };
    if (b.after.low > a.after.high) return words.laterHot(p);
    if (a.after.low > b.after.high) return words.laterCold(p);
    return words.alike(p);
  }
  if (stands && b.kind === 'notStopped') return words.onlyHot({ range: name, cold: stands });
  if (standsHot && a.kind === 'notStopped') return words.onlyCold({ range: name, hot: standsHot });
  return a.kind === 'notStopped' && b.kind === 'notStopped' ? words.neither({ range: name }) : null;
}

/** What a log shows, as a technician would say it, each with its place. What matters most stands first. */
export function findingsOf(
  { engagements, sensors }: LogRead,
  system: UnitSystem,
): readonly Finding[] {
  const print = printer(system);
  const found: Finding[] = [];
  const add = (text: string, at: number, engagement: number | null): void => {
    found.push({ text, place: { at, engagement } });
  };
  const within = (at: number): number | null => {
    const i = engagements.findIndex((one) => at >= one.at - 0.5 && at <= one.at + 8);
    return i < 0 ? null : i;
  };
  if (sensors.floor) {
    add(words.floor(print(sensors.floor.rpm, speed)), sensors.floor.at, within(sensors.floor.at));
  }
  const gone = [
    [sensors.turbineDropouts, words.turbineDropouts],
    [sensors.outputDropouts, words.outputDropouts],
  ] as const;
  for (const [times, says] of gone) {
    const [first] = times;
    if (first !== undefined) add(says(String(times.length)), first, null);
  }
  for (const pair of coldAndHot(engagements)) {
    const text = ofPair(pair);
    const { stop } = pair.hot.read;
    if (text !== null) add(text, 'at' in stop ? stop.at : pair.hot.read.at, pair.hot.index);
  }
  for (const [index, read] of engagements.entries()) {
    const where = whereOf(read, system);
    add(ofStop(read, where, print), 'at' in read.stop ? read.stop.at : read.at, index);
    const { slip } = read;
    if (slip.kind === 'measured') {
      const peak = print(slip.peak, speed);
      const high = print(slip.between.high, speed);
      const text =
        high === peak ? words.slipExact({ where, peak }) : words.slip({ where, peak, high });
      add(text, slip.at, index);
    }
    for (const { text, at } of ofController(read, where, print)) add(text, at, index);
  }
  return found;
}

/** What a log cannot show, and which trouble of its rows was passed over. */
export function blindWords({ blind, doubled, untimed }: LogRead): readonly string[] {
  const print = printer('si');
  const said = blind.map((spot): string => {
    switch (spot.kind) {
      case 'slow':
        return words.cannot.slow({
          step: print(spot.step, seconds),
          rate: formatNumber(1 / spot.step, rate, 'si'),
        });
      case 'tooSlowForRatio':
        return words.cannot.tooSlow({
          step: print(spot.step, seconds),
          held: print(illustrativeSettings.ratioTime, seconds),
        });
      case 'gaps':
        return words.cannot.gaps({ count: String(spot.count), longest: printLong(spot.longest) });
      default:
        return words.cannot[spot.kind];
    }
  });
  return [
    ...said,
    ...(doubled > 0 ? [words.cannot.doubled(String(doubled))] : []),
    ...(untimed > 0 ? [words.cannot.untimed(String(untimed))] : []),
  ];
}

/** What the file has and this page did not read, each with the row to look at. */
export function leftOutWords({ skipped, short, unread }: LeftOut): readonly string[] {
  const whole = (value: number): string => formatNumber(value, count, 'si');
  const seen = (rows: { readonly count: number; readonly first: number }) => ({
    count: whole(rows.count),
    row: whole(rows.first),
  });
  return [
    ...(skipped.count > 0 ? [words.cannot.skipped(seen(skipped))] : []),
    ...(short.count > 0 ? [words.cannot.short(seen(short))] : []),
    ...unread.map(({ role, saying, ...rows }) =>
      words.cannot.unread({ ...seen(rows), saying, column: columns.roles[role] }),
    ),
  ];
}

/** Over two minutes nobody reads seconds. */
export const printLong = (time: number): string =>
  time > 120 ? printer('si')(time / 60, minutes) : printer('si')(time, seconds);
