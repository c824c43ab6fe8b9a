import { describe, expect, test } from 'vitest';
import { OUTSIDE } from '../../src/cases/lists.ts';
import {
  asksCircuit,
  carried,
  causesOf,
  judge,
  repairGaps,
  type Named,
} from '../../src/cases/judge.ts';

const seal: Named = { cause: 'transferSeal' };
const forwardRings: Named = { cause: 'sealingRings', circuit: 'forward' };
const reverseRings: Named = { cause: 'sealingRings', circuit: 'reverse' };
const said = (...causes: readonly Named[]) => ({ causes, repairs: [] });

describe('a case is solved', () => {
  test('by every cause and no other', () => {
    expect(judge([seal], said(seal)).verdict).toBe('solved');
    expect(judge([seal, forwardRings], said(forwardRings, seal)).verdict).toBe('solved');
    expect(judge([seal], said(seal, forwardRings)).verdict).toBe('part');
    expect(judge([seal, forwardRings], said(seal)).verdict).toBe('part');
    expect(judge([seal], said({ cause: 'pumpWear' })).verdict).toBe('wrong');
  });

  test('in part, where the fault is right and the clutch is not', () => {
    const judged = judge([forwardRings], said(reverseRings));
    expect(judged.verdict).toBe('part');
    expect(judged.elsewhere).toEqual([reverseRings]);
  });

  test('by saying that nothing is wrong, where nothing is', () => {
    const truth = causesOf({ faults: {}, healthy: true });
    expect(judge(truth, said({ cause: 'healthy' })).verdict).toBe('solved');
    expect(judge(truth, said(seal)).verdict).toBe('wrong');
    expect(judge([seal], said({ cause: 'healthy' })).verdict).toBe('wrong');
  });

  test('by naming the cause that is on no list', () => {
    const truth = causesOf({ faults: {}, outside: { cause: 'coolerBlocked' } });
    expect(judge(truth, said({ cause: 'coolerBlocked' })).verdict).toBe('solved');
    expect(judge(truth, said({ cause: 'lowSupply' })).verdict).toBe('wrong');
  });

  test('with the clutch named only where a fault sits in one', () => {
    const truth = causesOf({
      faults: { pumpWear: { severity: 1 }, pistonSeal: { severity: 0.5, circuit: 'high' } },
    });
    expect(truth).toEqual([{ cause: 'pumpWear' }, { cause: 'pistonSeal', circuit: 'high' }]);
  });
});

describe('how far the readings carried it', () => {
  const advice = (probability: number, singleFaultFits = true) => ({
    faults: [
      { fault: 'transferSeal' as const, probability },
      {
        fault: 'sealingRings' as const,
        probability: 1 - probability,
        circuits: { forward: 1 - probability, reverse: 0, high: 0 },
      },
    ],
    fit: { d2: 1, readings: 5, p: 0.5, singleFaultFits },
  });
  const truth = { causes: [seal], decides: ['codes', 'idle'] };

  test('goes by its share of what still fits, right or not', () => {
    expect(carried(said(seal), truth, advice(0.93), [])).toBe('shown');
    expect(carried(said(seal), truth, advice(0.6), [])).toBe('likely');
    expect(carried(said(seal), truth, advice(0.2), [])).toBe('outran');
    expect(carried(said(forwardRings), truth, advice(0.2), [])).toBe('likely');
    expect(carried(said(reverseRings), truth, advice(0.05), [])).toBe('outran');
  });

  test('is complete once everything that decides was seen', () => {
    expect(carried(said(seal), truth, advice(0.2), ['idle', 'codes'])).toBe('shown');
    expect(carried(said(seal), { ...truth, decides: [] }, advice(0.2), ['codes'])).toBe('outran');
  });

  test('of two faults is likely once one alone does not fit', () => {
    expect(carried(said(seal, forwardRings), truth, advice(0.5, false), [])).toBe('likely');
    expect(carried(said(seal, forwardRings), truth, advice(0.5), [])).toBe('outran');
  });

  test('of a cause that has no share goes by what decides', () => {
    const cooler = said({ cause: 'coolerBlocked' });
    expect(carried(cooler, truth, advice(0.5), ['idle'])).toBe('likely');
    expect(carried(cooler, truth, advice(0.5), [])).toBe('outran');
  });
});

test('a repair plan is told what it lacks and what it does for nothing', () => {
  const car = { repair: ['pump', 'sealingRings'], also: ['coolerFlush'] } as const;
  expect(repairGaps(car, ['pump', 'bore', 'coolerFlush'])).toEqual({
    missing: ['sealingRings'],
    needless: ['bore'],
  });
  expect(repairGaps({ repair: ['pump'] }, ['pump', 'coolerFlush']).needless).toEqual([
    'coolerFlush',
  ]);
});

test('only a fault that sits in one clutch asks which; causes outside the list never do', () => {
  expect(asksCircuit('sealingRings')).toBe(true);
  expect(asksCircuit('transferSeal')).toBe(false);
  expect(asksCircuit('healthy')).toBe(false);
  for (const cause of OUTSIDE) expect(asksCircuit(cause)).toBe(false);
});
