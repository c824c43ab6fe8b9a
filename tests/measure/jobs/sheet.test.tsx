import render from 'preact-render-to-string';
import { afterAll, describe, expect, test, vi } from 'vitest';
import { ForCustomer } from '../../../src/measure/jobs/ForCustomer.tsx';
import { ForFile } from '../../../src/measure/jobs/ForFile.tsx';
import { JobSheet } from '../../../src/measure/jobs/JobSheet.tsx';
import { labelOf } from '../../../src/measure/jobs/label-of.ts';
import { makeJobs } from '../../../src/measure/jobs/model.ts';
import { Open } from '../../../src/measure/jobs/Open.tsx';
import { Readings } from '../../../src/measure/jobs/Readings.tsx';
import { Repair } from '../../../src/measure/jobs/Repair.tsx';
import { OnPaper } from '../../../src/measure/jobs/OnPaper.tsx';
import { healthyOf } from '../../../src/measure/jobs/pairs.ts';
import { makeSheet } from '../../../src/measure/jobs/sheet.ts';
import { dateOf } from '../../../src/ui/dates.ts';
import type { JobReading, TextOf } from '../../../src/storage/jobs/job.ts';
import { testOf } from '../../../src/diagnosis/index.ts';
import { training } from '../../../src/engine/index.ts';
import { NO_CODES } from '../../../src/planner/form-model.ts';
import { table } from '../../../src/planner/load.ts';
import { thinkOnPage } from '../../../src/planner/think-on-page.ts';

const store = {
  read: () => Promise.resolve({ status: 'ok' as const, records: [], damaged: [] }),
  write: () => Promise.resolve('ok' as const),
  leave: () => undefined,
  watch: () => () => undefined,
};
// The planner thinks in slices of time.
vi.useFakeTimers();
afterAll(() => {
  vi.useRealTimers();
});
/** Noon of a day, wherever it is read. */
const FIRST_DAY = Date.UTC(2026, 10, 28, 12);
function bay() {
  let clock = 1000;
  const jobs = makeJobs({ store, sheets: store, now: () => (clock += 1) });
  const job = jobs.add('Bay 3');
  const sheet = makeSheet(jobs, job.id, () => (clock += 1), thinkOnPage);
  sheet.planner.table.value = table;
  const read = (id: string, value: number | string, typed = '', temperatureC?: number): void => {
    sheet.planner.form.set({ test: id, text: typed });
    sheet.add(
      { test: testOf(id), value, ...(temperatureC !== undefined && { temperatureC }) },
      'us',
      typed,
    );
    sheet.planner.form.empty();
    vi.runAllTimers();
  };
  /** Until so many days after the first. */
  const day = (days: number): void => {
    clock = FIRST_DAY + days * 86_400_000;
  };
  const type = (entry: TextOf, value: string): void => {
    jobs.write(jobs.job(job.id) ?? job, entry, value);
  };
  return { jobs, sheet, read, day, type, id: job.id };
}
const text = (html: string): string =>
  html
    .replace(/<[^>]+>/g, ' ')
    .replaceAll('&amp;', '&')
    .replace(/[\s\u00a0]+/g, ' ');

describe('a job on the page', () => {
  test('says what each reading did, what is open, and what the next test would settle', () => {
    const { sheet, read } = bay();
    read('clutch.forward.700.hot', 232, '33.6');
    read('clutch.reverse.700.hot', 232, '33.6');
    expect(text(render(<Open sheet={sheet} />))).toMatch(/Still in it.*would rule out/);
    read('clutch.high.700.hot', 391, '56.7');
    const readings = text(render(<Readings sheet={sheet} />));
    expect(readings).toMatch(
      /Split transfer seal rises from \d+ % to over 99 %, and .* falls from/,
    );
    expect(sheet.steps.value.size).toBe(3);
    expect(text(render(<Open sheet={sheet} />))).toContain('No test left is worth its minutes.');
  });

  test('names two readings that contradict each other, at both', () => {
    const { sheet, read } = bay();
    read('line.park.700.hot', 600);
    read('fluidLevel', 'full');
    read('line.park.700.hot', 200);
    expect(sheet.clashes.value).toHaveLength(1);
    const said = text(render(<Readings sheet={sheet} />));
    expect(said.match(/cannot both be right on one car/g)).toHaveLength(2);
  });

  test('names a test that was taken twice with results too far apart, and a clutch above its line', () => {
    const { sheet, read } = bay();
    read('stopTime.drive.hot', 0.5);
    read('stopTime.drive.hot', 5);
    const twice = text(render(<Readings sheet={sheet} />));
    expect(twice).toContain('The same test also stands here with 5.00 s.');
    expect(twice.match(/two tries at one test do not come out that far apart/g)).toHaveLength(2);
    const other = bay();
    other.read('line.drive.700.hot', 400);
    other.read('clutch.forward.700.hot', 1200);
    const above = text(render(<Readings sheet={other.sheet} />));
    expect(above.match(/a clutch cannot hold more than the line that feeds it/g)).toHaveLength(2);
  });

  test('a reading that was taken out is named and put back, as it was and where it was', () => {
    const { sheet, read } = bay();
    read('line.park.700.hot', 600, '87 psi', 95);
    read('fluidLevel', 'full');
    const before = sheet.readings.value;
    const [reading] = before;
    if (reading === undefined) throw new Error('The reading is not there.');
    sheet.remove(reading);
    expect(sheet.readings.value).toHaveLength(1);
    expect(text(render(<Readings sheet={sheet} />))).toContain(
      'Taken out: Line pressure, Park, 700 rpm, hot: 87 psi at 203 °F. Put it back',
    );
    sheet.putBack();
    expect(sheet.readings.value).toEqual(before);
    expect(text(render(<Readings sheet={sheet} />))).not.toContain('Taken out');
    sheet.remove(reading);
    read('cable', 'out');
    expect(sheet.gone.value).toBeNull();
  });

  test('a proposed test is a reading of its own, also while another one is being changed', () => {
    const { sheet, read } = bay();
    read('line.park.700.hot', 600, '87 psi', 95);
    const [reading] = sheet.readings.value;
    if (reading === undefined) throw new Error('The reading is not there.');
    sheet.edit(reading, 'us');
    sheet.planner.form.begin('clutch.high.700.hot');
    sheet.add({ test: testOf('clutch.high.700.hot'), value: 391 }, 'us', '56.7');
    expect(sheet.readings.value.map(({ value }) => value)).toEqual([600, 391]);
  });

  test('codes that were read and are none come back into the form as that', () => {
    const { sheet } = bay();
    sheet.add({ test: testOf('codes'), value: [] }, 'us', '');
    const [reading] = sheet.readings.value;
    if (reading === undefined) throw new Error('The reading is not there.');
    sheet.edit(reading, 'us');
    expect(sheet.planner.form.draft.value.outcome).toBe(NO_CODES);
  });

  test('a job whose label is empty is called something', () => {
    const { jobs, id } = bay();
    const job = jobs.job(id);
    if (job === undefined) throw new Error('The job is not there.');
    jobs.write(job, 'label', ' ');
    expect(labelOf(jobs.job(id) ?? job)).toBe('No label');
  });

  test('keeps what stands in the form, and brings a reading back into it as it was typed', () => {
    const { jobs, sheet, read, id } = bay();
    read('line.park.700.hot', 600, '87 psi', 95);
    sheet.planner.form.set({ test: 'clutch.high.700.hot', text: 'about 4' });
    expect(jobs.job(id)?.draft.value).toMatchObject({
      test: 'clutch.high.700.hot',
      text: 'about 4',
    });
    expect(makeSheet(jobs, id).planner.form.draft.value.text).toBe('about 4');
    const [reading] = sheet.readings.value;
    if (reading === undefined) throw new Error('The reading is not there.');
    sheet.edit(reading, 'us');
    expect(sheet.planner.form.draft.value).toMatchObject({
      text: '87 psi',
      temperature: '203\u00a0°F',
    });
    sheet.add({ test: testOf('line.park.700.hot'), value: 590 }, 'us', '85.6');
    expect(sheet.readings.value.map(({ value }) => value)).toEqual([590]);
  });

  test('is drawn with all else where the planner did not load', () => {
    const { jobs, id } = bay();
    const said = text(
      render(
        <JobSheet
          jobs={jobs}
          id={id}
          planner={null}
          own={null}
          arrived={false}
          close={() => undefined}
        />,
      ),
    );
    expect(said).toContain('Bay 3');
    expect(said).toContain('The planner did not load.');
  });
});

describe('the pages for paper', () => {
  const { jobs, sheet, read, id } = bay();
  read('clutch.forward.700.hot', 172.4, '25', 95);
  read('fluidLevel', 'full');
  sheet.phase.value = 'after';
  read('clutch.forward.700.hot', 391, '56.7', 96);
  const job = () => jobs.job(id) ?? jobs.add('x');
  jobs.write(job(), 'repair', 'Seal set replaced.');
  jobs.write(job(), 'notes', 'Only for the file.');
  const file = text(render(<ForFile sheet={sheet} />));
  const customer = text(render(<ForCustomer sheet={sheet} />));

  test('the one for the file has every reading with its conditions, as typed too', () => {
    expect(file).toContain('25 psi 203 °F 25 psi');
    expect(file).toContain('57 psi 205 °F 56.7 psi');
    expect(file).toContain('Fluid level at its temperature Full');
    expect(file).toContain('Split transfer seal');
    expect(file).toContain('Only for the file.');
    expect(file).toContain('Proved hot');
  });

  test('the one for the customer has what was repeated, what was done and the proof, and no word of the trade', () => {
    expect(customer).toContain('Seal set replaced.');
    expect(customer).toMatch(/Fluid pressure, Forward clutch, warmed up.*25 psi.*57 psi/);
    expect(customer).toContain('The result is now what it should be.');
    expect(customer).not.toContain('Only for the file.');
    expect(customer).not.toMatch(/probab|posterior|severity|P07|rpm|solenoid|hypothes/i);
  });

  test('readings after a repair that nobody wrote down are not called no repair', () => {
    const bare = bay();
    const page = () => text(render(<ForCustomer sheet={bare.sheet} />));
    expect(page()).toContain('No repair has been done yet.');
    bare.sheet.phase.value = 'after';
    bare.read('clutch.forward.700.hot', 391, '56.7', 96);
    expect(page()).toContain('What was done has not been entered');
    expect(page()).not.toContain('No repair has been done yet.');
  });

  test('the pair stands on the sheet, with its temperatures', () => {
    const said = text(render(<Repair jobs={jobs} sheet={sheet} />));
    expect(said).toContain('As on a healthy car. Same temperature (1.8 °F apart).');
    expect(said).toContain('Proved hot');
  });
});

/** A stop that was late hot before the repair and is not after it. */
function late(after: readonly number[] = [0.72]) {
  const one = bay();
  one.read('stopTime.drive.hot', 1.6, '1.6 s', 95);
  one.sheet.phase.value = 'after';
  for (const value of after) one.read('stopTime.drive.hot', value, `${value} s`, 95);
  return {
    ...one,
    repair: () => text(render(<Repair jobs={one.jobs} sheet={one.sheet} />)),
    customer: () => text(render(<ForCustomer sheet={one.sheet} />)),
    file: () => text(render(<ForFile sheet={one.sheet} />)),
    printing: () => text(render(<OnPaper sheet={one.sheet} />)),
  };
}
const CLAIMS =
  /should be, before and after|is now what it|are what they should|did not show|Proved/;

describe('with nothing to judge by', () => {
  const { sheet, repair, customer, file, printing } = late();
  const judged = printing();
  test.each([
    ['noTable', 'this sheet has no table yet. Make the table first.'],
    ['making', 'is being made'],
    ['faulty', 'something on this sheet cannot be right'],
    ['gone', 'is not on this device, or it was deleted'],
    ['missed', 'did not load'],
    ['fetching', 'is loading'],
  ] as const)(
    '%s: the page, both papers and the print buttons say so and claim nothing',
    (is, why) => {
      expect(judged).not.toContain('Not judged');
      sheet.planner.table.value = null;
      sheet.planner.tableIs.value = is;
      vi.runAllTimers();
      for (const page of [repair(), file(), printing()]) {
        expect(page).toMatch(/Not judged/);
        expect(page).toContain(why);
        expect(page).not.toMatch(CLAIMS);
        expect(page).not.toMatch(/healthy car|training transmission/);
      }
      expect(customer()).toContain('1.60 s 0.72 s');
      expect(customer()).toContain('have not been compared with what they should be');
      expect(customer()).not.toMatch(CLAIMS);
      expect(customer()).not.toContain('training transmission');
    },
  );

  test('the customer’s page keeps back none of the readings after the work', () => {
    const one = late([1.5, 0.72]);
    one.sheet.planner.table.value = null;
    expect(one.customer()).toContain('1.60 s 1.50 s 0.72 s');
  });

  test('nothing is said of it where nothing was read', () => {
    const bare = bay();
    bare.sheet.planner.table.value = null;
    expect(text(render(<OnPaper sheet={bare.sheet} />))).not.toContain('Not judged');
  });
});

describe('a reading after the repair that is off', () => {
  test('stands in the table with what a healthy car reads and by how much it is off, and the sentence names it', () => {
    const { repair, file } = late([1.5, 0.72]);
    for (const page of [repair(), file()]) {
      expect(page).toMatch(
        /1\.60 s 1\.50 s Not as on a healthy car, which reads about 0\.\d\d s there; this is 0\.\d\d s more\./,
      );
      expect(page).toContain('1.60 s 0.72 s As on a healthy car.');
      expect(page).toMatch(
        /Not proved\. After the repair this is not what a healthy car shows: Time until the turbine stops, Drive, hot: 1\.50 s \(a healthy car: 0\.\d\d s\)/,
      );
      expect(page).toContain('the same test read right later does not undo it');
    }
  });

  test('is marked on the customer’s page, also where nothing was measured before', () => {
    const { read, customer, repair } = late([1.5, 0.72]);
    expect(customer()).toContain('1.60 s 1.50 s not what it should be 0.72 s');
    read('fluidLevel', 'veryLow');
    expect(customer()).toContain('Fluid level not measured Very low not what it should be');
    expect(repair()).toContain('Fluid level at its temperature: Very low (a healthy car: Full)');
  });

  test('without one nothing is marked, and a later reading stands for those before it', () => {
    const { customer, repair } = late([0.72, 0.7]);
    expect(customer()).not.toContain('not what it should be');
    expect(customer()).not.toContain('0.72 s');
    expect(customer()).toContain('0.70 s');
    expect(repair()).toContain('Proved hot');
  });
});

test.each([
  ['training', 'from a training transmission that was made up for teaching'],
  ['second', 'from a second training transmission'],
  ['own', 'the figures on this shop’s own sheet'],
] as const)('the customer’s page says what “should be” goes by: %s', (kind, said) => {
  const { sheet, customer } = late();
  sheet.planner.basis.value = { kind, plant: training };
  expect(customer()).toContain(said);
  expect(text(render(<ForCustomer sheet={bay().sheet} />))).not.toContain('should be is taken');
});

describe('the complaint', () => {
  test('stands first on both pages in the customer’s words; without it the customer’s says nothing of one', () => {
    const { sheet, type, read } = bay();
    const customer = () => text(render(<ForCustomer sheet={sheet} />));
    const file = () => text(render(<ForFile sheet={sheet} />));
    expect(file()).toContain('Complaint: not entered.');
    expect(customer()).not.toContain('What you told us');
    type('complaint', ' Revs up in Drive when hot. ');
    read('fluidLevel', 'full');
    expect(file()).toMatch(/Complaint: Revs up in Drive when hot\..*Readings/);
    expect(customer()).toMatch(/What you told us Revs up in Drive when hot\..*What we measured/);
  });
});

describe('what was found, on the customer’s page', () => {
  const found = (sheet: ReturnType<typeof bay>['sheet']): string => {
    const page = text(render(<ForCustomer sheet={sheet} />));
    return /What we found (.*?) What we measured/.exec(page)?.[1] ?? '';
  };

  test('is the cause that the readings before the repair point to, and what was off, in plain words', () => {
    const { sheet, read } = bay();
    expect(found(sheet)).toBe('');
    read('clutch.forward.700.hot', 172.4, '25', 95);
    expect(found(sheet)).toMatch(
      /were off before the repair: Fluid pressure, Forward clutch, warmed up\. The results alone do not settle the cause\. They fit best with a .*Not ruled out: /,
    );
    read('clutch.reverse.700.hot', 193, '28', 95);
    read('clutch.high.700.hot', 391, '56.7', 95);
    expect(found(sheet)).toMatch(
      /The results point to a split seal where fluid passes to the clutches\. What a result should be is taken here from a training transmission/,
    );
    expect(found(sheet)).not.toMatch(/probab|posterior|severity|rpm|%/i);
  });

  test('names no cause where nothing judges the readings, or where two of them cannot both be right', () => {
    const { sheet, read } = bay();
    read('line.park.700.hot', 600);
    read('line.park.700.hot', 200);
    expect(found(sheet)).toContain('Two of our results do not go together.');
    expect(found(sheet)).not.toMatch(/fit best|point to/);
    sheet.planner.table.value = null;
    vi.runAllTimers();
    expect(found(sheet)).toBe(
      'These results have not been compared with what they should be, so this page names no cause.',
    );
  });

  test('is nothing where a healthy car fits best, and nothing is off', () => {
    const { sheet, read } = bay();
    read('fluidLevel', 'full');
    const sound = sheet.planner.grounds.value?.sound;
    if (sound === undefined) throw new Error('The healthy car is not there.');
    for (const id of [
      'line.park.700.hot',
      'clutch.forward.700.hot',
      'clutch.reverse.700.hot',
      'clutch.high.700.hot',
      'stopTime.drive.hot',
      'stopTime.drive.cold',
    ])
      read(id, healthyOf({ test: testOf(id), value: 0 }, sound) as number);
    expect(found(sheet)).toMatch(
      /^None of our results was off before the repair\. These tests have not shown us a cause\./,
    );
  });

  test('is not made of readings that came after the repair', () => {
    const { sheet, read } = bay();
    sheet.phase.value = 'after';
    read('clutch.forward.700.hot', 172.4, '25', 95);
    expect(found(sheet)).toBe('Nothing was measured before a repair, so this page names no cause.');
  });
});

describe('the day on which a reading was entered', () => {
  const one = bay();
  one.day(0);
  one.read('clutch.forward.700.hot', 172.4, '25', 95);
  one.day(1);
  one.read('line.park.700.hot', 600, '87', 95);
  one.sheet.phase.value = 'after';
  one.day(3);
  one.read('clutch.forward.700.hot', 391, '56.7', 95);
  const [first, second, last] = [0, 1, 3].map((days) => dateOf(FIRST_DAY + days * 86_400_000));

  test('stands over the readings of that day, on the page and on paper', () => {
    const page = text(render(<Readings sheet={one.sheet} />));
    const file = text(render(<ForFile sheet={one.sheet} />));
    for (const said of [page, file]) {
      expect(said).toContain(`Taken down ${first} Clutch pressure, Forward`);
      expect(said).toContain(`Taken down ${second} Line pressure, Park`);
    }
    expect(page).toContain(`Taken down ${last} Clutch pressure, Forward`);
    // One day for all of a table stands in its title.
    expect(file).toContain(`After the repair, taken down ${last} Test and conditions`);
  });

  test('stands over a column of a table, and beside each where there are several', () => {
    for (const said of [
      text(render(<Repair jobs={one.jobs} sheet={one.sheet} />)),
      text(render(<ForCustomer sheet={one.sheet} />)),
    ])
      expect(said).toContain(`Before ${first} After ${last}`);
    one.day(4);
    one.read('clutch.forward.700.hot', 390, '56.6', 95);
    const pairs = text(render(<Repair jobs={one.jobs} sheet={one.sheet} />));
    expect(pairs).toContain(`Before ${first} After Clutch pressure`);
    expect(pairs).toContain(`25 psi 57 psi ${last}`);
  });

  test('stays when the reading is changed, and is not made up for one from elsewhere', () => {
    const [reading] = one.sheet.readings.value;
    if (reading === undefined) throw new Error('The reading is not there.');
    one.day(9);
    one.sheet.edit(reading, 'us');
    one.sheet.add({ test: testOf('clutch.forward.700.hot'), value: 170 }, 'us', '24.7');
    expect(text(render(<Readings sheet={one.sheet} />))).toContain(`Taken down ${first} Clutch`);
    const elsewhere = bay();
    const job = elsewhere.jobs.job(elsewhere.id);
    if (job === undefined) throw new Error('The job is not there.');
    const old = { test: 'fluidLevel', phase: 'before', value: 'full', typed: '', units: 'us' };
    elsewhere.jobs.change({ ...job, readings: { r1: { at: 5, value: old as JobReading } } });
    const said = text(render(<Readings sheet={elsewhere.sheet} />));
    expect(said).toContain('Fluid level at its temperature: Full');
    expect(said).not.toContain('Taken down');
  });
});

test('a job without a label is called so on both printed pages', () => {
  const { sheet, type } = bay();
  type('label', ' ');
  expect(render(<ForFile sheet={sheet} />)).toContain('<h1>No label</h1>');
  expect(text(render(<ForCustomer sheet={sheet} />))).toContain('Job: No label.');
});
