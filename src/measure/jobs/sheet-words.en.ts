import { minutesOf } from '../../planner/words.en.ts';

/** What stands on one job sheet. */
export const words = {
  back: 'All jobs',
  label: 'Label of this job',
  labelEmpty: (label: string) =>
    `A job has to have a label, one letter is enough. Until you type one it stays “${label}”.`,
  kept: 'Every key is kept on this device as you type.',
  complaint: {
    label: 'Complaint, in the customer’s words',
    how: 'What it does, in which range, cold or hot. Both printed pages begin with it.',
  },
  form: {
    title: 'Take down a reading',
    change: 'Change this reading',
    save: 'Save the change',
    leave: 'Leave it as it was',
    when: 'Taken',
    before: 'Before the repair',
    after: 'After the repair',
  },
  result: { title: 'What the readings come to', short: 'In short', all: 'See all' },
  readings: {
    title: 'Readings',
    none: 'None yet. Take down what you have, in any order; the tests under “Measure next” tell most for their minutes.',
    at: (temperature: string) => `at ${temperature}`,
    day: (day: string) => `Taken down ${day}`,
    asTyped: (typed: string) => `typed as ${typed}`,
    change: 'Change',
    remove: 'Take out',
    which: (p: { test: string; action: string }) => `${p.action}: ${p.test}`,
    unknown: (test: string) =>
      `“${test}” came from another version of this site. It is kept and printed, and nothing is concluded from it.`,
    minutes: (minutes: string) => `${minutesOf(minutes)} of tests before the repair.`,
  },
  /** What a reading did to the list. */
  step: {
    up: (p: { fault: string; from: string; to: string }) =>
      `${p.fault} rises from ${p.from} to ${p.to}.`,
    down: (p: { fault: string; from: string; to: string }) =>
      `${p.fault} falls from ${p.from} to ${p.to}.`,
    upAndDown: (p: {
      up: string;
      upFrom: string;
      upTo: string;
      down: string;
      downFrom: string;
      downTo: string;
    }) =>
      `${p.up} rises from ${p.upFrom} to ${p.upTo}, and ${p.down} falls from ${p.downFrom} to ${p.downTo}.`,
    little: 'It moves nothing on the list by more than three in a hundred.',
  },
  clash: {
    /** By what the planner knows of cars. */
    known: (p: { other: string; value: string }) =>
      `This and “${p.other}” (${p.value}) cannot both be right on one car, by anything that this site knows. Check units, range, gear and tap of both, and take the quicker one again.`,
    twice: (p: { value: string }) =>
      `The same test also stands here with ${p.value}. The two cannot both be right on one car at one fluid temperature: two tries at one test do not come out that far apart. Check both for a slip, units and gear, then take it a third time and write the temperature down.`,
    aboveLine: (p: { other: string; value: string }) =>
      `This and “${p.other}” (${p.value}) cannot both be right on one car at one fluid temperature: a clutch cannot hold more than the line that feeds it. Check units, gear and tap of both, and take the quicker one again.`,
  },
  outcomes: {
    title: 'What the first of them would settle',
    rulesOut: (p: { test: string; value: string; faults: string }) =>
      `${p.test}: about ${p.value} would rule out ${p.faults}.`,
    shows: (p: { test: string; value: string; faults: string }) =>
      `${p.test}: “${p.value}” would rule out ${p.faults}.`,
    never: (p: { test: string; faults: string }) =>
      `${p.test}: a turbine that does not stop would rule out ${p.faults}.`,
    nothing: 'No single result of it rules a cause out; it shifts the list.',
  },
  open: {
    title: 'What is still open',
    between: (p: { faults: string }) => `Still in it, with four in a hundred or more: ${p.faults}.`,
    worth: (p: { minutes: string }) =>
      `The quickest test that still tells something takes ${minutesOf(p.minutes)}.`,
    sure: (p: { fault: string }) =>
      `${p.fault} is past nine in ten. Further tests seldom change that, so measure on only where a wrong guess costs more than the minutes.`,
  },
  repair: {
    title: 'Repair, and what it changed',
    done: 'What was done',
    doneHow: 'Parts and work, in plain words: this is printed for the customer.',
    pairsNone:
      'Take the same test again after the repair, at the same fluid temperature. It then stands here beside the one before.',
    test: 'Test',
    before: 'Before',
    after: 'After',
    caption: 'The same test before and after the repair',
    same: (apart: string) => `Same temperature (${apart} apart).`,
    apart: (p: { apart: string; same: string; band: string }) =>
      `${p.apart} apart. The planner takes any ${p.band} as one band; proof in the trade asks for ${p.same} or less. Take it once more at the first temperature.`,
    unwritten: (p: { usual: string }) =>
      `A temperature was not written down; it counts as ${p.usual}. Proof needs both.`,
    needless: 'Temperature does not matter here.',
    right: 'As on a healthy car.',
    unknown: 'Not judged.',
    off: (p: { healthy: string }) =>
      `Not as on a healthy car, which reads about ${p.healthy} there.`,
    over: (p: { healthy: string; by: string }) =>
      `Not as on a healthy car, which reads about ${p.healthy} there; this is ${p.by} more.`,
    under: (p: { healthy: string; by: string }) =>
      `Not as on a healthy car, which reads about ${p.healthy} there; this is ${p.by} less.`,
    offSeen: (p: { healthy: string }) =>
      `Not as on a healthy car, which shows “${p.healthy}” there.`,
    proofs: {
      none: 'Nothing has been measured after the repair yet.',
      proved:
        'Proved hot: what was off before reads right now, in the same test at the same temperature.',
      notSame:
        'Not proved yet: it reads right now, but not at the temperature of the first reading, or that was not written down.',
      notHot:
        'Not proved hot: no test stands here both before and after the repair with the fluid hot. A complaint that comes hot is proved hot.',
      nothingWasOff:
        'Not proved: what was taken hot on both sides read right before the repair as well. Repeat the test that showed the fault.',
    },
    offOne: (p: { test: string; value: string; healthy: string }) =>
      `${p.test}: ${p.value} (a healthy car: ${p.healthy})`,
    stillOff: (p: { readings: string }) =>
      `Not proved. After the repair this is not what a healthy car shows: ${p.readings}. Look there before the car goes out.`,
    rightLater:
      'That the same test read right later does not undo it: find out why the two differ. If it was mistyped, or taken before the last of the work, change it or take it out.',
    unjudged: {
      fetching: 'Not judged yet: the planner’s table is loading.',
      ready: 'Not judged yet: the planner is at work on its table.',
      noTable: 'Not judged: this sheet has no table yet. Make the table first.',
      making: 'Not judged yet: the table of this sheet is being made.',
      faulty:
        'Not judged: something on this sheet cannot be right. Open the sheet, mend the fields that say so, then make the table.',
      gone: 'Not judged: the sheet that this job is on is not on this device, or it was deleted. Take it in from its file, or choose another transmission.',
      missed:
        'Not judged: the planner’s table did not load. Check that you are connected, then load the page again.',
    },
    partly: (p: { tests: string }) =>
      `Proved hot only in part: what was taken again reads right now, at the same temperature. These read off hot before the repair and have not been taken since: ${p.tests}.`,
    limits: {
      training:
        'Right and off go by the training transmission. On a real car the maker’s figure decides.',
      second:
        'Right and off go by the second training transmission. On a real car the maker’s figure decides.',
      own: 'Right and off go by your numbers, and by assumed ones where you typed none. The maker’s figure decides.',
    },
  },
  notes: {
    title: 'Notes and label',
    label: 'Notes on the job',
    how: 'For yourself and the file. The customer’s page does not show them.',
  },
};
