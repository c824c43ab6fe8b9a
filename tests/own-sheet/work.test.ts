import { describe, expect, test } from 'vitest';
import { keptSecondTable } from '../../src/diagnosis/kept-second-table.ts';
import { NODES } from '../../src/diagnosis/index.ts';
import { secondSheet, trainingSheet } from '../../src/engine/index.ts';
import type { Answer } from '../../src/own-sheet/messages.ts';
import { sheetWork } from '../../src/own-sheet/work.ts';

/** What the worker answers to one question, up to the one that the page stops it at. */
function answersTo(ask: Parameters<ReturnType<typeof sheetWork>>[0], most = Infinity): Answer[] {
  const told: Answer[] = [];
  const ended = new Error('ended');
  try {
    sheetWork((answer) => {
      told.push(answer);
      // A worker is ended from outside; here an error is the way out of it.
      if (told.length >= most) throw ended;
    })(ask);
  } catch (error) {
    if (error !== ended) throw error;
  }
  return told;
}

test(
  'tells how far a table has come, ever further, a hundredth at a time',
  { timeout: 60_000 },
  () => {
    const told = answersTo({ kind: 'table', sheet: trainingSheet }, 2);
    const shares = told.flatMap((answer) => (answer.kind === 'progress' ? [answer.share] : []));
    expect(shares).toHaveLength(2);
    expect(shares[0]).toBeGreaterThanOrEqual(0.01);
    expect(shares[1]).toBeGreaterThan(shares[0] ?? 1);
    // The first hundredth is five rows of 482.
    expect(shares[0]).toBeLessThan(NODES.length / 482);
  },
);

// Fifty seconds of work: WHOLE_TABLE=yes npx vitest run tests/own-sheet/work.test.ts
test.runIf(process.env['WHOLE_TABLE'] === 'yes')(
  'the second training transmission’s table comes out as the one that is kept, to the letter',
  { timeout: 900_000 },
  () => {
    const told = answersTo({ kind: 'table', sheet: secondSheet });
    expect(told.at(-1)).toEqual({ kind: 'table', text: keptSecondTable });
  },
);

describe('the sound car', () => {
  const soundOf = (sheet: typeof trainingSheet) => {
    const [answer] = answersTo({ kind: 'sound', sheet });
    if (answer?.kind !== 'sound') throw new Error('no sound car');
    return answer.sound;
  };

  // The commands of the training gearbox are printed in its paper, section 12: 600/400 at idle, 1000/800 under load, Reverse × 1.3.
  test('of the training transmission has what is commanded, within a twentieth, and nothing to be asked about', () => {
    const { taps, remarks, stops } = soundOf(trainingSheet);
    expect(taps.line['cold-idle']).toEqual({ reads: 600, wanted: 600 });
    expect(taps.reverse['hot-load'].wanted).toBeCloseTo(1040, 9);
    for (const tap of ['forward', 'high'] as const) {
      expect(taps[tap]['hot-idle'].wanted).toBe(400);
      expect(taps[tap]['hot-idle'].reads).toBeGreaterThan(380);
    }
    expect(remarks).toEqual([]);
    // Engagement of a sound one within a second: common practice, no source.
    expect(stops.drive.hot).toBeLessThan(1);
  });

  test.each([
    ['first no shorter than third', { ratios: { ...trainingSheet.ratios, first: 1.2 } }, 'gears'],
    ['a load test slower than idle', { idle_rpm: 1600 }, 'loadSpeed'],
    [
      'a line that falls under load',
      { commands: { ...trainingSheet.commands, idleLine_kPa: 1100 } },
      'lineFalls',
    ],
    [
      'more fluid above the pick-up than there is',
      { sump: { ...trainingSheet.sump, spare_L: 9 } },
      'spare',
    ],
    ['an idle that the tests are not at', { idle_rpm: 850 }, 'idleApart'],
    [
      'a load test that the tests are not at',
      { commands: { ...trainingSheet.commands, load_rpm: 2000 } },
      'loadApart',
    ],
    ['a pump too small', { pump: { ...trainingSheet.pump, displacement_cm3: 6 } }, 'short'],
    // A twentieth of the friction radius times faces holds a twentieth of the torque: section 5 of the same paper.
    [
      'clutches too small for the stall',
      { clutch: { ...trainingSheet.clutch, faces: 2, radius_mm: 40 } },
      'stall',
    ],
  ])('%s is asked about', (_what, change, kind) => {
    const { remarks } = soundOf({ ...trainingSheet, ...change });
    expect(remarks.map((remark) => remark.kind)).toContain(kind);
  });

  test('a sheet that the engine refuses is told as failed, and the next one is answered', () => {
    const told: Answer[] = [];
    const ask = sheetWork((answer) => told.push(answer));
    ask({ kind: 'sound', sheet: { ...trainingSheet, idle_rpm: Number.NaN } });
    ask({ kind: 'sound', sheet: trainingSheet });
    expect(told.map(({ kind }) => kind)).toEqual(['failed', 'sound']);
  });
});
