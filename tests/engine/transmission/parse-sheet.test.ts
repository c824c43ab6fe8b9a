import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  CIRCUITS,
  EngineError,
  SHEET_FIELDS,
  SheetError,
  parseSheet,
  secondSheet,
  trainingSheet,
} from '../../../src/engine/index.ts';
import type { Allowed } from '../../../src/engine/index.ts';
import { SEED, sheets } from '../arbitraries.ts';

/** Path, allowed range and training value of every number of a sheet. */
interface Field {
  readonly path: string;
  readonly allowed: Allowed;
  readonly usual: number;
}
function fieldsOf(fields: object, usual: object, path = ''): Field[] {
  return Object.entries(fields).flatMap(([key, value]: [string, Allowed | object]): Field[] => {
    const here = path === '' ? key : `${path}.${key}`;
    const at = (usual as Readonly<Record<string, number | object>>)[key];
    if ('min' in value) return [{ path: here, allowed: value, usual: at as number }];
    return fieldsOf(value, at as object, here);
  });
}
const FIELDS = fieldsOf(SHEET_FIELDS, trainingSheet);

/** A sheet that says one thing. */
const only = (path: string, value: unknown): unknown =>
  path.split('.').reduceRight<unknown>((inner, key) => ({ [key]: inner }), value);

function refusal(given: unknown): { readonly path: string; readonly sentence: string } {
  try {
    parseSheet(given);
  } catch (thrown) {
    expect(thrown).toBeInstanceOf(EngineError);
    const { argument, message } = thrown as EngineError;
    expect(message).toMatch(/^\S.{10,400}\.$/su);
    // What has no unit leaves no gap where one would stand.
    expect(message).not.toMatch(/\s[.,;]|\s\s/u);
    return { path: argument, sentence: message };
  }
  throw new Error('it was accepted');
}

it('has the fields of the model page', () => {
  // Counted by hand in the shared sheet of the transmission, drag_N with them.
  expect(FIELDS).toHaveLength(4 + 6 + 3 + 3 + 2 + 2 + 7 + 2 + 2 + 1 + 3 + 1 + 3 + 11 + 3 + 2);
});

describe.each(FIELDS)('$path', ({ path, allowed, usual }) => {
  const { name, unit, min, max } = allowed;
  const step = (max - min) * 1e-9;

  it.each([min - step, max + step, -1e300])(
    '%d is refused with its name, range and unit',
    (value) => {
      const { path: where, sentence } = refusal(only(path, value));
      expect(where).toBe(path);
      expect(sentence).toContain(name);
      expect(sentence).toContain(`from ${min} to ${max}${unit === '' ? '' : ` ${unit}`}.`);
    },
  );

  it.each([
    ['text', '12'],
    ['nothing', null],
    ['a list', [usual]],
    ['yes', true],
    ['no number', Number.NaN],
  ])('%s is refused with its range', (_what, value) => {
    const { path: where, sentence } = refusal(only(path, value));
    expect(where).toBe(path);
    expect(sentence).toContain(`${min} to ${max}`);
  });

  it('is taken at both ends, unless another number of the sheet forbids it', () => {
    for (const end of [min, max]) {
      try {
        const sheet = parseSheet(only(path, end));
        const got = path
          .split('.')
          .reduce<unknown>((at, key) => (at as Record<string, unknown>)[key], sheet);
        expect(got).toBe(end);
      } catch (thrown) {
        // The ends of some fields do not go with the training sheet: its commands, its springs. Never with its own range.
        expect(thrown).toBeInstanceOf(EngineError);
        expect((thrown as EngineError).message).toMatch(
          /cannot be commanded above|must not be above|must be below the least|the clutch never applies/,
        );
      }
    }
  });

  it('has a training value inside its range', () => {
    expect(usual).toBeGreaterThanOrEqual(min);
    expect(usual).toBeLessThanOrEqual(max);
  });
});

describe('what is left out and what is not known', () => {
  it('nothing said is the training transmission, and one thing said changes one thing', () => {
    expect(parseSheet({})).toEqual(trainingSheet);
    expect(parseSheet({ pump: { displacement_cm3: 12 } })).toEqual({
      ...trainingSheet,
      pump: { ...trainingSheet.pump, displacement_cm3: 12 },
    });
    expect(parseSheet({ idle_rpm: 650 }, secondSheet)).toEqual({ ...secondSheet, idle_rpm: 650 });
    expect(parseSheet({ clutches: { high: { faces: 6 } } }, secondSheet).clutches).toEqual({
      ...secondSheet.clutches,
      high: { ...secondSheet.clutches.high, faces: 6 },
    });
  });

  it('a sheet written out and read again is the same sheet', () => {
    fc.assert(
      fc.property(sheets, (sheet) => {
        expect(parseSheet(JSON.parse(JSON.stringify(sheet)))).toEqual(sheet);
      }),
      { seed: SEED, numRuns: 200 },
    );
    for (const sheet of [trainingSheet, secondSheet]) {
      expect(parseSheet(JSON.parse(JSON.stringify(sheet)), sheet)).toEqual(sheet);
    }
    expect(parseSheet(JSON.parse(JSON.stringify(secondSheet)))).toEqual(secondSheet);
  });

  it.each([
    ['gears', { gears: 6 }, 'gears', 'ratios'],
    ['a key of JavaScript', JSON.parse('{"__proto__": {"x": 1}}'), '__proto__', 'pump'],
    ['constructor', { constructor: 1 }, 'constructor', 'pump'],
    [
      'a key in a part',
      { pump: { size: 17 } },
      'pump.size',
      'displacement_cm3, slip, filter_perM3, suction_kPa',
    ],
    [
      'a key in the seal',
      { seal: { height_mm: 1 } },
      'seal.height_mm',
      'width_mm, length_mm, circuits',
    ],
    [
      'a clutch there is not',
      { clutches: { second: {} } },
      'clutches.second',
      'forward, reverse, high',
    ],
    ['a key of a clutch', { clutches: { high: { plates: 5 } } }, 'clutches.high.plates', 'faces'],
    ['a gear there is not', { applyChart: { '5': ['high'] } }, 'applyChart.5', 'R'],
    [
      'a key of a fluid',
      { fluid: { kv40_cSt: 30, kv100_cSt: 6, density15_kgm3: 850, vi: 150 } },
      'fluid.vi',
      'kv100_cSt',
    ],
  ] as const)('%s is refused with the keys there are', (_what, given: unknown, path, key) => {
    const { path: where, sentence } = refusal(given);
    expect(where).toBe(path);
    expect(sentence).toMatch(/There is no key/);
    expect(sentence).toContain(key);
  });

  it.each([
    ['no object', 12, '', /must be an object with any of the keys/],
    ['a list', [], '', /must be an object/],
    ['a part that is a number', { pump: 17 }, 'pump', /^pump must be an object/],
    ['a name that is none', { name: ' ' }, 'name', /1 to 60 characters/],
    ['a name without end', { name: 'x'.repeat(61) }, 'name', /1 to 60 characters/],
    [
      'no circuit behind the seal',
      { seal: { circuits: [] } },
      'seal.circuits',
      /forward, reverse, high/,
    ],
    ['a circuit twice', { seal: { circuits: ['high', 'high'] } }, 'seal.circuits', /each once/],
    ['a gear without a clutch', { applyChart: { '4': [] } }, 'applyChart.4', /one or more of/],
    ['a fluid there is not', { fluid: 'thick' }, 'fluid', /standard, low-viscosity, ultra-low/],
    ['a fluid of nothing', { fluid: {} }, 'fluid.kv40_cSt', /needs all three/],
    ['half a fluid', { fluid: { kv40_cSt: 30 } }, 'fluid.kv100_cSt', /needs all three/],
    [
      'a fluid thicker hot than cold',
      { fluid: { kv40_cSt: 6, kv100_cSt: 30, density15_kgm3: 850 } },
      'fluid.kv100_cSt',
      /30 cSt.*6 cSt.*smaller/,
    ],
  ] as const)('%s is refused', (_what, given: unknown, path, words) => {
    const { path: where, sentence } = refusal(given);
    expect(where).toBe(path);
    expect(sentence).toMatch(words);
  });
});

describe('a sheet with several faults', () => {
  const pathsOf = (given: unknown): readonly string[] => {
    try {
      parseSheet(given);
    } catch (thrown) {
      if (!(thrown instanceof SheetError)) throw thrown;
      expect(thrown.argument).toBe(thrown.faults[0]?.argument);
      return thrown.faults.map(({ argument }) => argument);
    }
    return [];
  };

  it('names each of them once, whatever part it stands in', () => {
    const given = {
      gears: 6,
      idle_rpm: 'slow',
      pump: { slip: 2, size: 3, suction_kPa: 30 },
      feed: 4,
      seal: { width_mm: -1, circuits: [] },
      clutches: { high: { faces: 0, plates: 5 }, second: {} },
      applyChart: { '4': [] },
      fluid: { kv40_cSt: 30 },
      name: ' ',
    };
    expect(pathsOf(given).toSorted()).toEqual(
      [
        'gears',
        'idle_rpm',
        'pump.slip',
        'pump.size',
        'feed',
        'seal.width_mm',
        'seal.circuits',
        'clutches.high.faces',
        'clutches.high.plates',
        'clutches.second',
        'applyChart.4',
        'fluid.kv100_cSt',
        'fluid.density15_kgm3',
        'name',
      ].toSorted(),
    );
  });

  it('names every pair of numbers that do not go together', () => {
    const given = {
      commands: { idleClutch_kPa: 601, clutchMost_kPa: 200 },
      applyChart: { '1': ['high'], '3': ['forward'] },
    };
    expect(pathsOf(given)).toEqual([
      'commands.idleClutch_kPa',
      'commands.clutchLeast_kPa',
      'applyChart.1',
      'applyChart.3',
    ]);
  });

  it('names each of ranges broken at random', () => {
    const some = fc.uniqueArray(fc.constantFrom(...FIELDS), {
      minLength: 1,
      maxLength: 12,
      selector: ({ path }) => path,
    });
    fc.assert(
      fc.property(some, (broken) => {
        const given: Record<string, Record<string, unknown> | number> = {};
        for (const { path, allowed } of broken) {
          const [part = '', key] = path.split('.');
          const wrong = allowed.max * 2 + 1;
          if (key === undefined) given[part] = wrong;
          else given[part] = { ...(given[part] as Record<string, unknown>), [key]: wrong };
        }
        expect(pathsOf(given).toSorted()).toEqual(broken.map(({ path }) => path).toSorted());
      }),
      { seed: SEED, numRuns: 100 },
    );
  });
});

describe('numbers that do not go together', () => {
  const { commands } = trainingSheet;
  it.each([
    [
      'a clutch commanded above the line at idle',
      { commands: { idleClutch_kPa: 601 } },
      'commands.idleClutch_kPa',
      ['601', '600'],
    ],
    [
      'and under load',
      { commands: { loadLine_kPa: 799 } },
      'commands.loadClutch_kPa',
      ['800', '799'],
    ],
    [
      'least above most',
      { commands: { clutchMost_kPa: 249 } },
      'commands.clutchLeast_kPa',
      ['250', '249'],
    ],
    // 250 kPa is the least command of the training transmission; a band as wide leaves the valve never wide open.
    [
      'a valve that never opens',
      { feed: { band_kPa: 200 }, commands: { clutchLeast_kPa: 200 } },
      'feed.band_kPa',
      ['200 kPa'],
    ],
    // By hand: 2200 N on 85 cm2 are 259 kPa.
    [
      'a spring that wins',
      { clutch: { spring_N: 2200 } },
      'clutch.spring_N',
      ['2200 N', '85 cm2', '259 kPa', '250 kPa'],
    ],
    [
      'in one clutch',
      { clutches: { reverse: { area_cm2: 30 } } },
      'clutches.reverse',
      ['reverse', '900 N on 30 cm2', '300 kPa'],
    ],
  ] as const)('%s', (_what, given: unknown, path, words) => {
    const { path: where, sentence } = refusal(given);
    expect(where).toBe(path);
    for (const word of words) expect(sentence).toContain(word);
  });

  it('and the same numbers just apart are taken', () => {
    expect(parseSheet({ commands: { idleClutch_kPa: 600 } }).commands.idleClutch_kPa).toBe(600);
    expect(parseSheet({ commands: { clutchMost_kPa: 250 } }).commands.clutchMost_kPa).toBe(250);
    expect(parseSheet({ clutch: { spring_N: 2120 } }).clutch.spring_N).toBe(2120);
    expect(commands.clutchLeast_kPa).toBe(250);
  });

  it.each([
    ['R', 'reverse'],
    ['1', 'forward'],
    ['3', 'high'],
  ] as const)('gear %s without %s', (gear, circuit) => {
    const others = CIRCUITS.filter((name) => name !== circuit);
    const { path, sentence } = refusal({ applyChart: { [gear]: others } });
    expect(path).toBe(`applyChart.${gear}`);
    expect(sentence).toContain(`must name ${circuit}`);
  });
});

// What is wrong, and what is allowed, in a sentence that stays short whatever was typed.
describe('keys that nobody knows', () => {
  const many = (count: number): Record<string, number> =>
    Object.fromEntries(Array.from({ length: count }, (_, i) => [`x${i + 1}`, 1]));
  it.each([
    [many(1), /^There is no key x1 in the transmission sheet; the keys are pump, /u],
    [many(5), /^There are no keys x1, x2, x3, x4, x5 in the transmission sheet; the keys /u],
    [many(7), /^There are no keys x1, x2, x3, x4, x5 and 2 more in the transmission sheet; /u],
    [{ pump: many(1) }, /^There is no key x1 in pump; the keys are displacement_cm3, /u],
    [{ ['y'.repeat(50)]: 1 }, /^There is no key y{40} in the transmission sheet; /u],
  ])('%j', (given, sentence) => {
    expect(refusal(given).sentence).toMatch(sentence);
  });
});
