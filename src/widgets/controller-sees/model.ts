import { computed, signal } from '@preact/signals';
import { illustrativeSettings } from '../../engine/index.ts';
import { givensFrom } from '../../simulation/givens.ts';
import type { SimModel } from '../../simulation/sim-spec.ts';
import { recording, RECORDING_IDS, type RecordingId } from '../../car/recordings.ts';
import { replay, type Replay } from '../../car/replay.ts';

export type SeesGivens = {
  /** Ratio check: slip over this [rpm] … */
  slipLimit: number;
  /** … for this long [s]. */
  slipTime: number;
  recording: RecordingId;
  /** Engagement check: slip over this [rpm] … */
  engagementLimit: number;
  /** … at this time after selection [s]. */
  engagementTime: number;
  /** Largest error of one reading [rpm]. */
  noise: number;
  /** Smallest step the sensor can tell [rpm]. */
  resolution: number;
};

/** The limits of the training controller, and a sensor as good as a tone wheel's (invented). */
export const START: SeesGivens = {
  slipLimit: illustrativeSettings.ratioSlipRpm,
  slipTime: illustrativeSettings.ratioTime,
  recording: 'crack25',
  engagementLimit: illustrativeSettings.engagementSlipRpm,
  engagementTime: illustrativeSettings.engagementTime,
  noise: 10,
  resolution: 10,
};

export type Verdict = 'passes' | 'false-alarm' | 'caught' | 'missed-fault';

export interface Judged extends Replay {
  readonly id: RecordingId;
  readonly healthy: boolean;
  readonly verdict: Verdict;
}

export function makeModel() {
  const { givens, apply, reset } = givensFrom(START);
  const settings = computed(() => ({
    ...illustrativeSettings,
    ratioSlipRpm: givens.slipLimit.value,
    ratioTime: givens.slipTime.value,
    engagementSlipRpm: givens.engagementLimit.value,
    engagementTime: givens.engagementTime.value,
  }));
  const judge = (id: RecordingId): Judged => {
    const one = recording(id);
    const seen = replay(one, settings.value, {
      noiseRpm: givens.noise.value,
      // A link can carry a step so small that dividing by it overflows; nobody can tell it from none.
      resolutionRpm: givens.resolution.value < 0.01 ? 0 : givens.resolution.value,
    });
    const verdict = one.healthy
      ? seen.failed
        ? 'false-alarm'
        : 'passes'
      : seen.failed
        ? 'caught'
        : 'missed-fault';
    return { ...seen, id, healthy: one.healthy, verdict };
  };
  // One for each, so that the picture asks only for the recording it shows.
  const judged = new Map(RECORDING_IDS.map((id) => [id, computed(() => judge(id))]));
  const of = (id: RecordingId): Judged => {
    const found = judged.get(id);
    if (!found) throw new Error(`There is no recording ${id}.`);
    return found.value;
  };
  const all = computed(() => RECORDING_IDS.map(of));
  const counted = (verdict: Verdict): readonly RecordingId[] =>
    all.value.filter((one) => one.verdict === verdict).map(({ id }) => id);
  return {
    givens,
    apply,
    reset,
    /** The moment that the picture and the diagram show [s]; null while nobody points at one. */
    cursor: signal<number | null>(null),
    settings,
    of,
    all,
    shown: computed(() => of(givens.recording.value)),
    falseAlarms: computed(() => counted('false-alarm')),
    caught: computed(() => counted('caught')),
    /** What the limits must let pass: the healthy recordings at their worst. */
    healthyWorst: computed(() => {
      const healthy = all.value.filter((one) => one.healthy);
      return {
        longestOver: Math.max(...healthy.map(({ longestOver }) => longestOver)),
        slowest: Math.max(...healthy.map(({ id }) => recording(id).stoppedAfter ?? 0)),
      };
    }),
  } satisfies SimModel<SeesGivens> & Record<string, unknown>;
}
export type SeesModel = ReturnType<typeof makeModel>;
