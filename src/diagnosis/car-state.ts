/** How a car stands between two tests, and what the next one takes (specification of the planner, section 2). */
import {
  REFIT_MINUTES,
  SET_UPS,
  SET_UP_MINUTES,
  type SetUp,
  type Test,
  type Warmth,
} from './tests.ts';

/** How the car stands now. */
export interface CarState {
  readonly temperature: Warmth;
  /** Set-ups that are there, temperatures apart. */
  readonly fitted: readonly SetUp[];
  /** A frosty night is at hand. */
  readonly coldMorning: boolean;
}
export const ARRIVES: CarState = { temperature: 'cold', fitted: [], coldMorning: false };

const isWarmth = (setUp: SetUp): setUp is Warmth =>
  setUp === 'hot' || setUp === 'cold' || setUp === 'frost';
/** Whether the engine has to run for a test. */
const runs = ({ setUps }: Test): boolean => setUps.some(isWarmth);

/** Set-ups of a test that are not there, in their order. */
export const missingFor = (
  { setUps }: Test,
  { temperature, fitted }: Pick<CarState, 'temperature' | 'fitted'>,
): readonly SetUp[] =>
  SET_UPS.filter((one) => setUps.includes(one) && one !== temperature && !fitted.includes(one));

/** Minutes of a test from how the car stands: its own, missing set-ups, and putting together what is apart. */
export function minutesFor(test: Test, { temperature, fitted }: CarState): number {
  const missing = missingFor(test, { temperature, fitted });
  const apart = fitted.includes('valveBodyOff')
    ? REFIT_MINUTES.valveBodyOff
    : fitted.includes('panOff')
      ? REFIT_MINUTES.panOff
      : 0;
  return (
    test.minutes +
    missing.reduce((sum, setUp) => sum + SET_UP_MINUTES[setUp], 0) +
    (runs(test) ? apart : 0)
  );
}

/** How the car stands after a test. */
export function stateAfter(test: Test, state: CarState): CarState {
  const kept = runs(test)
    ? state.fitted.filter((one) => one !== 'panOff' && one !== 'valveBodyOff')
    : state.fitted;
  const added = test.setUps.filter((setUp) => !isWarmth(setUp) && !kept.includes(setUp));
  return {
    ...state,
    temperature: test.setUps.find(isWarmth) ?? state.temperature,
    fitted: [...kept, ...added],
  };
}
