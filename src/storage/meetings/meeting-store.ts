/** The meetings of one's own on a device. */
import { recordFile } from '../kept-file.ts';
import { recordStore } from '../record-store.ts';
import {
  isMeetingDeleted,
  meetingMarkOnly,
  mergeMeetings,
  readOwnMeeting,
  type OwnMeeting,
} from './own-meeting.ts';

const NAME = 'hot-clutch:meetings';

export const meetingStore = (name = NAME) =>
  recordStore<OwnMeeting>(name, {
    place: 'meetings',
    read: readOwnMeeting,
    merge: mergeMeetings,
    isDeleted: isMeetingDeleted,
    markOnly: meetingMarkOnly,
  });
export type MeetingStore = ReturnType<typeof meetingStore>;

export const meetingFile = recordFile<OwnMeeting>({
  kind: NAME,
  /** 1: a vote says why of the right option alone. */
  version: 2,
  place: 'meetings',
  read: readOwnMeeting,
});
