import { computed } from '@preact/signals';
import { dated, timedId } from '../../storage/dated.ts';
import { keptRecords } from '../../storage/kept-records.ts';
import {
  isMeetingDeleted,
  mergeMeetings,
  newMeeting,
  withMeetingDeleted,
  type OwnMeeting,
  type OwnPlan,
} from '../../storage/meetings/own-meeting.ts';
import { meetingFile, type MeetingStore } from '../../storage/meetings/meeting-store.ts';

interface Needs {
  readonly store: Pick<MeetingStore, 'read' | 'write' | 'leave' | 'watch'>;
  readonly now?: () => number;
}

/** The meetings of this device, as this page has them. */
export function makeMeetings({ store, now = Date.now }: Needs) {
  const kept = keptRecords<OwnMeeting>({
    store,
    file: meetingFile,
    merge: mergeMeetings,
    isDeleted: isMeetingDeleted,
    withDeleted: withMeetingDeleted,
    now,
  });
  const { all, standing, change } = kept;
  return {
    ...kept,
    meeting: (id: string): OwnMeeting | undefined => all.value.get(id),
    /** Changed last first. */
    listed: computed(() => standing.value.toSorted((a, b) => b.plan.at - a.plan.at)),
    add: (plan: OwnPlan): OwnMeeting => {
      const at = now();
      const meeting = newMeeting(timedId(at), at, plan);
      change(meeting, 'now');
      return meeting;
    },
    rewrite: (meeting: OwnMeeting, plan: OwnPlan): void =>
      change({ ...meeting, plan: dated(meeting.plan, now(), plan) }),
    fileOf: (meeting: OwnMeeting): string => meetingFile.write([meeting]),
  };
}
export type MeetingsModel = ReturnType<typeof makeMeetings>;

/** A list with one of it somewhere else; off its ends nothing moves. */
export function moved<Of>(list: readonly Of[], from: number, by: -1 | 1): readonly Of[] {
  const to = from + by;
  const one = list[from];
  if (one === undefined || to < 0 || to >= list.length) return list;
  return list.toSpliced(from, 1).toSpliced(to, 0, one);
}
