import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import {
  clockIn,
  decimalMarkOf,
  findLayout,
  guessColumns,
  isBlank,
  numberIn,
  readTable,
  sayings,
  textOf,
  toMetric,
} from '../../src/log/index.ts';
import { seriesOf } from './read-log.ts';

const bytes = (...values: readonly number[]) => new Uint8Array(values);
const utf8 = (text: string) => new TextEncoder().encode(text);

describe('a cell', () => {
  it.each([
    ['712', '.', 712],
    [' 712.5 ', '.', 712.5],
    ['1,712.5', '.', 1712.5],
    ['1.712,5', ',', 1712.5],
    ['0,8', ',', 0.8],
    ['\u221212', '.', -12],
    ['1e3', '.', 1000],
    ['.5', '.', 0.5],
  ] as const)('%s with %s is %s', (cell, mark, value) => expect(numberIn(cell, mark)).toBe(value));

  it.each(['---', 'N/A', '', ' ', 'P', '1.2.3', '12 rpm', '0x10', 'Infinity', '1,2,3.4'])(
    '%j is no number',
    (cell) => expect(numberIn(cell, '.')).toBeNaN(),
  );

  it('that two commas stand in is no decimal', () => expect(numberIn('1,2,3', ',')).toBeNaN());

  it.each(['', '---', 'N/A', 'nan', '–', '?'])('%j says that there was no reading', (cell) =>
    expect(isBlank(cell)).toBe(true),
  );

  it('can be a clock', () => {
    expect(clockIn('00:01:02.5')).toBe(62.5);
    expect(clockIn('2026-03-04T10:00:00,25Z')).toBe(36000.25);
    expect(clockIn('10:00')).toBeNaN();
  });

  test('any number printed with either mark reads back', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: -9_999_999, max: 9_999_999 }),
        fc.integer({ min: 0, max: 3 }),
        (n, digits) => {
          const text = (n / 10 ** digits).toFixed(digits);
          expect(numberIn(text, '.')).toBe(Number(text));
          expect(numberIn(text.replace('.', ','), ',')).toBe(Number(text));
        },
      ),
    );
  });
});

describe('the decimal mark', () => {
  it('is a point beside thousands', () => expect(decimalMarkOf(['1,200.5', '0.5'])).toBe('.'));
  it('is a comma', () => expect(decimalMarkOf(['0,01', '712,5', '3'])).toBe(','));
  it('is a comma with thousands parted by points', () =>
    expect(decimalMarkOf(['1.200,5', '700,5'])).toBe(','));
});

const table = 'Time;Turbine;Temp\n0,0;712,5;20\n0,1;711,0;20\n0,2;---;21\n';

describe('the layout', () => {
  it('tells a semicolon from decimal commas', () => {
    expect(findLayout(table)).toMatchObject({ separator: ';', decimalMark: ',', firstRow: 1 });
  });
  it('finds tabs, and units in brackets', () => {
    const layout = findLayout('t [ms]\tTSS [rpm]\tTFT (°F)\n0\t712\t68\n100\t711\t68\n');
    expect(layout).toMatchObject({ separator: '\t', units: ['ms', 'rpm', '°F'] });
  });
  it('passes over lines before the header, and takes a row of units for what it is', () => {
    const layout = findLayout(
      `Car 3\nMade 2026-01-02\n\nTime,Input speed,Oil temp\ns,1/min,°C\n0,700,20\n0.1,690,20\n`,
    );
    expect(layout).toMatchObject({
      names: ['Time', 'Input speed', 'Oil temp'],
      units: ['s', 'rpm', '°C'],
      firstRow: 5,
    });
  });
  it('does without a header', () => {
    expect(findLayout('0,700\n0.1,690\n')).toMatchObject({ names: ['', ''], firstRow: 0 });
  });
  it('reads quoted cells with separators and decimal commas inside', () => {
    const layout = findLayout('"Time, s","Turbine, rpm"\n"0,1","712,5"\n"0,2","711,0"\n');
    expect(layout).toMatchObject({
      separator: ',',
      decimalMark: ',',
      names: ['Time, s', 'Turbine, rpm'],
    });
  });
  it.each(['', 'one line', 'a,b\nc,d\n', 'just\nwords\nhere\n'])('of %j there is none', (text) =>
    expect(findLayout(text)).toBeUndefined(),
  );
});

describe('a file', () => {
  it.each([
    ['a picture', bytes(0x89, 0x50, 0x4e, 0x47, 13, 10), { kind: 'foreign', what: 'picture' }],
    ['a PDF', utf8('%PDF-1.7\n'), { kind: 'foreign', what: 'pdf' }],
    ['packed', bytes(0x50, 0x4b, 3, 4, 0), { kind: 'foreign', what: 'archive' }],
    ['JSON', utf8('{"rows": [1, 2]}'), { kind: 'foreign', what: 'json' }],
    ['JSON, a list', utf8('[{"t": 0}]'), { kind: 'foreign', what: 'json' }],
    ['a web page', utf8('<!doctype html><p>1,2'), { kind: 'foreign', what: 'markup' }],
    ['empty', bytes(), { kind: 'empty' }],
    ['blank', utf8(' \n \n'), { kind: 'empty' }],
    ['bytes', bytes(1, 2, 0, 0, 3, 9), { kind: 'binary' }],
  ])('%s is refused by what it is', (_what, file, trouble) =>
    expect(textOf(file)).toEqual(trouble),
  );

  it('loses its byte-order mark', () => expect(textOf(utf8('\uFEFFt,b'))).toBe('t,b'));
  it('is read as UTF-16 where it says so', () =>
    expect(textOf(bytes(0xff, 0xfe, 0x74, 0, 0x2c, 0, 0x62, 0))).toBe('t,b'));
  it('is read as an old code page where it is no UTF-8', () =>
    expect(textOf(bytes(0xb0, 0x43, 0x2c, 0x62))).toBe('°C,b'));
  it('may begin with a bracket: a header in brackets is no JSON', () =>
    expect(textOf(utf8('[s],[rpm]\n1,2'))).toBe('[s],[rpm]\n1,2'));

  test('of any bytes is text or a reason, never an exception', () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 300 }), (any) => {
        const read = textOf(any);
        if (typeof read !== 'string') return;
        const layout = findLayout(read);
        if (layout) readTable(read, layout);
      }),
    );
  });
});

test('any table written with any separator reads back', () => {
  const cell = fc.oneof(
    fc.integer({ min: -9999, max: 9999 }).map((n) => n / 10),
    fc.constant(Number.NaN),
  );
  const write = (value: number, mark: string) =>
    Number.isNaN(value) ? '---' : value.toFixed(1).replace('.', mark);
  fc.assert(
    fc.property(
      fc.array(fc.tuple(cell, cell), { minLength: 5, maxLength: 60 }),
      fc.constantFrom([',', '.'], [';', ','], ['\t', ','], ['\t', '.'], [';', '.']),
      fc.constantFrom('\n', '\r\n'),
      (rows, [separator = ',', mark = '.'], end) => {
        const lines = rows.map(([a, b], i) =>
          [write(i / 10, mark), write(a, mark), write(b, mark)].join(separator),
        );
        const text = [['Time', 'Turbine', 'Output'].join(separator), ...lines].join(end);
        const layout = findLayout(text);
        // A table without any reading in its first rows has no place where readings begin.
        if (layout?.firstRow !== 1) return;
        const read = readTable(text, layout);
        expect(read.rows).toBe(rows.length);
        expect([...(read.columns[1]?.numbers ?? [])]).toEqual(
          rows.map(([a]) => (Object.is(a, -0) ? -0 : a)),
        );
      },
    ),
  );
});

describe('columns', () => {
  it('are guessed once each', () => {
    const columns = guessColumns(
      [
        'Elapsed',
        'Time',
        'Engine RPM',
        'ISS',
        'OSS',
        'PRNDL',
        'ATF temp',
        'Engine coolant temp',
        'Engine oil press',
      ],
      ['', 's', '', '', '', '', '', '', 'kPa'],
    );
    expect(columns).toMatchObject({
      time: { column: 1 },
      turbine: { column: 3 },
      output: { column: 4 },
      engine: { column: 2 },
      range: { column: 5 },
      temperature: { column: 6 },
    });
    const taken = Object.values(columns).map(({ column }) => column);
    expect(new Set(taken).size).toBe(taken.length);
  });

  it('keep words as words, a few of them', () => {
    const layout = findLayout('t,n,range\n0,1,P\n1,1,D\n2,1,\n3,1,P\n');
    if (layout === undefined) throw new Error('no layout');
    const { columns } = readTable('t,n,range\n0,1,P\n1,1,D\n2,1,\n3,1,P\n', layout);
    expect(columns[2] && sayings(columns[2])).toEqual(['P', 'D']);
  });
});

// NIST SP 811 (2008), appendix B.8 and B.9: 1 psi = 6.894 757 kPa, 1 mi/h = 1.609 344 km/h, °C = (°F - 32)/1.8.
test('units become metric', () => {
  expect(toMetric(1, 'psi')).toBeCloseTo(6.894757, 6);
  expect(toMetric(1, 'mph')).toBe(1.609344);
  expect(toMetric(212, '°F')).toBeCloseTo(100, 9);
  expect(toMetric(1, 'bar')).toBe(100);
  expect(toMetric(250, 'ms')).toBe(0.25);
});

const log = (
  rows: readonly string[],
  head = 'Time (s),Turbine (rpm),Output (rpm),Fluid temp (°C)',
) => [head, ...rows].join('\n');

describe('troubles', () => {
  const kinds = (text: string) => seriesOf(text).troubles.map(({ role, kind }) => [role, kind]);
  it('time that runs back is named by its row in the file', () => {
    const { troubles, series } = seriesOf(log(['0,700,0,20', '0.1,700,0,20', '0.05,700,0,20']));
    expect(troubles).toEqual([{ role: 'time', kind: 'runsBack', row: 4, from: 0.1, to: 0.05 }]);
    expect(series).toBeUndefined();
  });
  it('time that stands still', () =>
    expect(kinds(log(['1,700,0,20', '1,700,0,20', '1,700,0,20']))).toEqual([
      ['time', 'standsStill'],
    ]));
  it('a doubled row is left out and counted', () => {
    const { series } = seriesOf(
      log(['0,700,0,20', '0.1,690,0,20', '0.1,680,0,20', '0.2,670,0,20']),
    );
    expect(series?.doubled).toBe(1);
    expect([...(series?.time ?? [])]).toEqual([0, 0.1, 0.2]);
  });
  it('no speed at all', () =>
    expect(kinds('Time (s),Volts\n0,12\n0.1,12\n')).toEqual([['turbine', 'missing']]));
  it('a turbine in turns a second', () =>
    expect(kinds(log(['0,12,0,20', '0.1,55,0,20']))).toEqual([['turbine', 'hertz']]));
  it('a temperature in °F', () =>
    expect(kinds(log(['0,700,0,176', '0.1,700,0,203']))).toEqual([['temperature', 'fahrenheit']]));
  it('a time in ms', () =>
    expect(kinds(log(['0,700,0,20', '100,700,0,20', '200,700,0,20']))).toEqual([
      ['time', 'milliseconds'],
    ]));
  it('a column of words', () =>
    expect(kinds(log(['0,700,0,---', '0.1,700,0,N/A']))).toEqual([['temperature', 'noNumbers']]));
});
