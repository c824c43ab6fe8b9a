import { format, formatNumber } from '../../quantity/print.ts';
import { ratio } from '../../quantity/part-quantities.ts';
import { percent, seconds, speed } from '../../quantity/quantities.ts';
import { words } from './words.en.ts';

/** The controller's states by the names the model gives them. */
export type ControllerStateName =
  | 'waiting'
  | 'engaging'
  | 'watching'
  | 'pressureRaised'
  | 'failSafeNeutral'
  | 'failSafePark'
  | 'failSafeDefaultGear';

export interface ControllerStatesState {
  /** Inked; none where the diagram stands alone. */
  current?: ControllerStateName | undefined;
  /** Limits and times that stand at the arrows. */
  settings: {
    readonly engagementSlipRpm: number;
    /** [s] */
    readonly engagementTime: number;
    readonly ratioSlipRpm: number;
    /** Share of turbine speed, 0 to 1. */
    readonly ratioSlipShare: number;
    /** [s] */
    readonly ratioTime: number;
    /** Times the pressure before. */
    readonly pressureRaise: number;
  };
  /** As it should be read, units and all. */
  parkSpeed: string;
}

export const controllerStatesExample: ControllerStatesState = {
  settings: {
    engagementSlipRpm: 100,
    engagementTime: 1.5,
    ratioSlipRpm: 80,
    ratioSlipShare: 0.03,
    ratioTime: 0.3,
    pressureRaise: 1.3,
  },
  parkSpeed: '3.1 mph',
};

/** What stands at the arrows, printed. */
export const printed = ({ settings }: ControllerStatesState) => ({
  look: {
    slip: format(settings.engagementSlipRpm, speed, 'si'),
    time: format(settings.engagementTime, seconds, 'si'),
  },
  watch: {
    slip: format(settings.ratioSlipRpm, speed, 'si'),
    share: format(100 * settings.ratioSlipShare, percent, 'si'),
    time: format(settings.ratioTime, seconds, 'si'),
    times: formatNumber(settings.pressureRaise, ratio, 'si'),
  },
});

export function describeControllerStates(s: ControllerStatesState): string {
  const { describe, states } = words;
  const { look, watch } = printed(s);
  return [
    describe.looks(look),
    describe.raises(watch),
    describe.stores,
    describe.cable,
    describe.wire({ speed: s.parkSpeed }),
    ...(s.current ? [describe.now({ state: states[s.current] })] : []),
  ].join(' ');
}
