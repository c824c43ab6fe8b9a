import { describe, expect, it } from 'vitest';
import { played, started, steppedTo } from '../../../src/simulation/player/playing.ts';

describe('the player', () => {
  it('plays to the end and stands there', () => {
    expect(played({ at: 6.9, rate: 1 }, 0.5, 7)).toEqual({ at: 7, rate: 0 });
    expect(played({ at: 1, rate: 0.25 }, 1, 7)).toEqual({ at: 1.25, rate: 0.25 });
  });
  it('starts again from the beginning once it has come to the end', () => {
    expect(started({ at: 7, rate: 0 }, 1, 7)).toEqual({ at: 0, rate: 1 });
    expect(started({ at: 2, rate: 0 }, 1, 7)).toEqual({ at: 2, rate: 1 });
  });
  it('steps by event and stays where there is none further', () => {
    expect(steppedTo([0.5, 2, 3], 0.5, 1)).toBe(2);
    expect(steppedTo([0.5, 2, 3], 3, 1)).toBe(3);
    expect(steppedTo([0.5, 2, 3], 2, -1)).toBe(0.5);
    expect(steppedTo([0.5, 2, 3], null, 1)).toBe(0.5);
  });
});
