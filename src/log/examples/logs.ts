/**
 * Three invented logs of the training transmission, each as another tool might write it: other names, units and separators,
 * other readings a second. `node tests/log/write-examples.ts` puts them into public/logs; a test holds the two together.
 */
import { crackFault } from '../../car/index.ts';
import { chance } from './chance.ts';
import { driveStory, type Leg, type Moment } from './drive-story.ts';

/** Their names are neutral: a file's name stands above its readings, and is no place for the answer. */
export const EXAMPLES = ['practice-1', 'practice-2', 'practice-3'] as const;
export type Example = (typeof EXAMPLES)[number];

interface Tool {
  readonly seed: number;
  /** Between rows [s], and how far a row may come early or late [s]. */
  readonly step: number;
  readonly jitter: number;
  readonly head: string;
  readonly separator: string;
  readonly ends: string;
  /** One cell for each column. `noise` is even within -1 and 1. */
  readonly row: (moment: Moment, noise: () => number, count: number) => readonly string[];
}

/** Rounded to the sensor's step. */
const steps = (value: number, step: number): number => Math.round(value / step) * step;
const speed = (rpm: number, noise: () => number, step: number, loud: number): number =>
  rpm < 1 ? 0 : Math.max(0, steps(rpm + loud * noise(), step));
const comma = (value: number, digits: number): string => value.toFixed(digits).replace('.', ',');
const fahrenheit = (tempC: number): number => tempC * 1.8 + 32;

const healthy: Tool = {
  seed: 11,
  step: 0.05,
  jitter: 0.004,
  separator: ',',
  ends: '\n',
  head: 'Time (s),Engine speed (rpm),Turbine speed (rpm),Output speed (rpm),Range,Fluid temp (°F),Brake switch,Throttle (%),Road speed (mph),Line pressure (psi)\n',
  row: (m, noise) => [
    m.time.toFixed(3),
    String(speed(m.engine, noise, 1, 4)),
    String(speed(m.turbine, noise, 1, 4)),
    String(speed(m.output, noise, 1, 1)),
    m.range,
    String(Math.round(fahrenheit(m.temperature))),
    m.brake ? 'ON' : 'OFF',
    m.throttle.toFixed(1),
    (m.road / 1.609344).toFixed(1),
    (m.line / 6.894757293168361 + 0.5 * noise()).toFixed(1),
  ],
};

const splitSeal: Tool = {
  seed: 23,
  step: 0.1,
  jitter: 0.015,
  separator: ';',
  ends: '\r\n',
  head: 'Road log of an invented car;;;;;;;;;\r\nMade for practice;;;;;;;;;\r\n\r\nElapsed time;N engine;N turbine;N output;Selector;Oil temp.;Pedal;Clutch pressure;Line pressure;Remark\r\ns;1/min;1/min;1/min;;°C;%;kPa;kPa;\r\n',
  row: (m, noise, count) => [
    comma(m.time, 2),
    comma(speed(m.engine, noise, 0.5, 3), 1),
    comma(speed(m.turbine, noise, 0.5, 3), 1),
    comma(speed(m.output, noise, 0.5, 0.5), 1),
    { P: 'Park', R: 'Reverse', N: 'Neutral', D: 'Drive' }[m.range],
    // Its slow signals come in every tenth row.
    count % 10 === 0 ? comma(m.temperature, 1) : '---',
    comma(m.throttle, 1),
    comma(steps(m.clutch + 3 * noise(), 5), 0),
    comma(steps(m.line + 3 * noise(), 5), 0),
    '',
  ],
};

const falseSensor: Tool = {
  seed: 37,
  step: 0.04,
  jitter: 0,
  separator: '\t',
  ends: '\n',
  head: '\uFEFF"t [ms]"\t"ENG [rpm]"\t"TSS [rpm]"\t"OSS [rpm]"\t"Lever"\t"TFT [°C]"\t"Brake"\t"VSS [km/h]"\n',
  row: (m, noise, count) => {
    // The plug: on the road the signal is gone for one row now and then.
    const gone = m.output > 100 && count % 173 === 0;
    return [
      String(Math.round(m.time * 1000)),
      String(speed(m.engine, noise, 8, 4)),
      String(gone ? 0 : speed(m.turbine, noise, 4, 2)),
      String(speed(m.output, noise, 2, 1)),
      `"${m.range}"`,
      count % 25 === 0 ? String(Math.round(m.temperature)) : 'N/A',
      m.brake ? '1' : '0',
      m.road.toFixed(1),
    ];
  },
};

const cracked = { faults: crackFault(0.25) };
const lying = { faults: { turbineSensor: { severity: 1 } } };

const made: Readonly<Record<Example, { readonly tool: Tool; readonly legs: readonly Leg[] }>> = {
  'practice-1': {
    tool: healthy,
    legs: [
      { car: {}, range: 'drive', tempC: 20, waits: 3, drives: 8 },
      { car: {}, range: 'reverse', tempC: 24, waits: 2, drives: 4 },
      { car: {}, range: 'drive', tempC: 95, waits: 3, pause: 1500, drives: 8 },
      { car: {}, range: 'reverse', tempC: 95, waits: 2, drives: 4 },
    ],
  },
  'practice-2': {
    tool: splitSeal,
    legs: [
      { car: cracked, range: 'drive', tempC: 20, waits: 3, drives: 8 },
      { car: cracked, range: 'reverse', tempC: 23, waits: 2, drives: 4 },
      { car: cracked, range: 'drive', tempC: 96, waits: 3, pause: 1800, drives: 0 },
      { car: cracked, range: 'reverse', tempC: 96, waits: 3, pause: 60, drives: 0 },
    ],
  },
  'practice-3': {
    tool: falseSensor,
    legs: [
      { car: lying, range: 'drive', tempC: 22, waits: 3, drives: 10, looksOn: true },
      { car: lying, range: 'drive', tempC: 94, waits: 3, pause: 1200, drives: 10, looksOn: true },
    ],
  },
};

/** One of the logs, as its file stands. */
export function exampleLog(id: Example): string {
  const { tool, legs } = made[id];
  const even = chance(tool.seed);
  const noise = () => 2 * even() - 1;
  const lines: string[] = [];
  let due = 0;
  let count = 0;
  for (const moment of driveStory(legs)) {
    if (moment.time + 1e-9 < due) continue;
    lines.push(tool.row(moment, noise, count).join(tool.separator));
    count += 1;
    // After a pause the tool begins anew and does not catch up.
    due = Math.max(due, moment.time - tool.step) + tool.step + tool.jitter * noise();
  }
  return tool.head + lines.join(tool.ends) + tool.ends;
}
