import type { BayKey, Reach } from '../../cases/bay-tests.ts';

interface Worth {
  worth: string;
  minutes: string;
}
interface Three {
  seal: string;
  sealMinutes: string;
  sealRate: string;
  tap: string;
  tapMinutes: string;
  tapRate: string;
  cold: string;
  coldMinutes: string;
  coldRate: string;
}
export const words = {
  title: 'The list and the clock',
  tests: {
    codes: 'Stored codes',
    turbine: 'Turbine speed, engine off, key on',
    cold: 'Time until the turbine stops, Drive, cold',
    hotDrive: 'Time until the turbine stops, Drive, hot',
    hotReverse: 'Time until the turbine stops, Reverse, hot',
    current: 'Solenoid current, forward clutch',
    level: 'Fluid level at its temperature',
    look: 'Look and smell of the fluid',
    cable: 'Lever or cable adjustment',
    line: 'Line pressure, Drive, idle, hot',
    tap: 'Forward clutch pressure, idle, hot',
    pan: 'Pan and filter',
    bore: 'Vacuum on the regulator bore',
    air: 'Where air escapes, forward clutch',
    seal: 'Air test, transfer seal',
  } satisfies Record<BayKey, string>,
  /** Whatever each test can say, in the order of the bay. */
  readings: {
    codes: ['none', 'P0731', 'P0736', 'P0731 and P0736'],
    turbine: ['nothing turns', 'a speed'],
    cold: ['on time', 'late', 'never'],
    hotDrive: ['on time', 'late', 'never'],
    hotReverse: ['on time', 'late', 'never'],
    current: ['as commanded', 'off'],
    level: ['full', 'low', 'very low'],
    look: ['normal', 'dark', 'metal in it', 'foam'],
    cable: ['right', 'out'],
    line: ['under half', 'short', 'has its command'],
    tap: ['under half', 'short', 'has its command'],
    pan: ['clean', 'lining dust', 'metal in it', 'filter clogged'],
    bore: ['holds', 'leaks'],
    air: ['quiet', 'at the rings', 'in the drum', 'in a passage'],
    seal: ['leaks', 'holds'],
  } satisfies Record<BayKey, readonly string[]>,
  reaches: {
    seat: 'from the seat',
    outside: 'outside',
    line: 'a line opened',
    pan: 'pan off',
    body: 'pan and body off',
  } satisfies Record<Reach, string>,
  under: (p: { least: string }) => `under ${p.least}`,
  can: (p: { said: string; chance: string }) => `${p.said} ${p.chance}`,
  before: (p: { minutes: string; reach: string; can: string }) =>
    `${p.minutes}, ${p.reach}. Can say: ${p.can}.`,
  after: (p: Worth & { said: string }) =>
    `It said: ${p.said}. It was worth ${p.worth} halvings, in ${p.minutes}.`,
  names: { healthy: 'Nothing wrong', unlisted: 'Not in this list' },
  controls: {
    car: 'Car in the bay',
    number: (p: { number: string }) => `Car ${p.number}`,
  },
  clock: {
    none: 'Nothing measured yet.',
    spent: (p: { minutes: string; reach: string }) =>
      `${p.minutes} so far. Furthest reach: ${p.reach}.`,
  },
  predict: {
    question:
      'Your car, cold again. P0731 and P0736 are stored, the turbine signal is honest, level (read warm) and cable are right. Which test takes most off the list for its minutes?',
    options: {
      seal: {
        words: 'Air test of the transfer seal, which you suspect',
        why: (p: Three) =>
          `It would nearly prove your suspect, or clear it. But one name out of many is a small split: ${p.seal} halvings, and with pan and body off it takes ${p.sealMinutes}. That is ${p.sealRate} in ten minutes.`,
      },
      tap: {
        words: 'Gauge on the forward clutch, hot: an exact number',
        why: (p: Three) =>
          `It tells a lot, ${p.tap} halvings. Warming up and hooking up take ${p.tapMinutes}, so it makes ${p.tapRate} in ten minutes. It stays a good test for later, when the car is hot anyway.`,
      },
      cold: {
        words: 'Drive, cold, with the scan tool that is hooked up: is it on time?',
        why: (p: Three) =>
          `A rough answer, worth ${p.cold} halvings, but in ${p.coldMinutes}: ${p.coldRate} in ten minutes. It tells what is late at any temperature from what shows only hot. Tomorrow it is free again; once the car is hot it is gone for today.`,
      },
    },
    runLabel: 'Take the best',
  },
  outcome: (p: Three & { open: string }) =>
    `Halvings in ten minutes: air test ${p.sealRate}, gauge ${p.tapRate}, cold stop time ${p.coldRate}. It was on time. The list is as open as one of ${p.open}.`,
  says: {
    whole: (p: { names: string }) => `All ${p.names} names are on the list.`,
    open: (p: { minutes: string; open: string }) =>
      `${p.minutes}, and as open as a list of ${p.open}.`,
    settled: (p: { minutes: string }) => `${p.minutes}, and as good as one name.`,
    one: (p: { name: string; share: string }) => `In front: ${p.name}, ${p.share}.`,
    level: (p: { names: string }) => `Level in front: ${p.names}.`,
    stop: (p: { name: string; share: string }) =>
      `One name is far above the rest: ${p.name}, ${p.share}. Stop here.`,
    outside: (p: { share: string }) =>
      `Best of all fits what is not in this list, ${p.share}. Replace no part, look again.`,
    nothing: 'No test left here splits it. Stop, and write down what is left.',
    tooSoon: (p: { left: string }) => `The pan came off before this was done: ${p.left}.`,
  },
  list: {
    name: 'The list, and how much speaks for each name',
    off: 'far down',
  },
};
