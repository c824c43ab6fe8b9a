import { languages } from '../language/languages.ts';
import { plural } from '../quantity/lists.ts';

const { locale } = languages.en;
const count = (n: string, one: string, other: string): string =>
  plural(Number(n), { one: `1 ${one}`, other: `${n} ${other}` }, locale);

const notKept = {
  full: 'there was no room left in this browser',
  blocked: 'this browser keeps nothing for this site',
  newer: 'a later version of this site has been here, so reload this page first',
  busy: 'another tab of this site holds it, so close that tab first',
  failed: 'the browser reported a fault in what it stores',
};

export const words = {
  looking: 'Looking at what this device keeps.',
  stuck:
    'The part of this page that reads your answers could not be loaded. Check that you are connected, then try again.',
  again: 'Try again',
  here: {
    title: 'What is on this device',
    none: 'None of your practice is on this device yet. If you have a file from another one, take it in below.',
    toToday: 'Or begin with today’s round',
    answers: (p: { count: string }) =>
      count(p.count, 'answer to a question', 'answers to questions'),
    predictions: (p: { count: string }) =>
      count(p.count, 'prediction in a simulation', 'predictions in simulations'),
    fromTo: (p: { what: string; from: string; to: string }) =>
      `${p.what}, from ${p.from} to ${p.to}`,
    lessons: (p: { count: string }) =>
      count(p.count, 'lesson marked as done', 'lessons marked as done'),
    place: 'The place where you stopped reading',
    plan: (p: { plan: string }) => `Your plan: ${p.plan}`,
    rehearsal: (p: { date: string; done: string; of: string }) =>
      `A rehearsal under way, begun on ${p.date}, with ${p.done} of ${p.of} questions answered`,
    rehearsed: (p: { count: string }) =>
      count(p.count, 'rehearsal handed in', 'rehearsals handed in'),
    cases: (p: { count: string }) => count(p.count, 'practice case', 'practice cases'),
    jobs: (p: { count: string }) => count(p.count, 'job sheet', 'job sheets'),
    sheets: (p: { count: string }) =>
      count(p.count, 'transmission of your own', 'transmissions of your own'),
    meetings: (p: { count: string }) =>
      count(p.count, 'meeting of your own', 'meetings of your own'),
    columns: (p: { count: string }) =>
      count(
        p.count,
        'scan tool whose log columns you chose',
        'scan tools whose log columns you chose',
      ),
    settings: 'Your choice of units and of light or dark',
    unreadable: (p: { count: string }) =>
      `${count(p.count, 'entry', 'entries')} that cannot be read. They are left where they lie, and are in no file.`,
  },
  plan: {
    exam: (p: { date: string; minutes: string }) =>
      `exam on ${p.date}, rounds of ${p.minutes} minutes`,
    noExam: (p: { minutes: string }) => `no exam, rounds of ${p.minutes} minutes`,
    underWay: (p: { plan: string }) => `${p.plan}, and a round under way`,
  },
  places: {
    answers: 'answers',
    jobs: 'job sheets',
    sheets: 'transmissions',
    meetings: 'meetings',
    parts: 'plan, lessons done, rehearsals, and practice cases',
  },
  faults: {
    unread: (p: { what: string; why: string }) => `Your ${p.what} could not be read: ${p.why}.`,
    untaken: (p: { what: string; why: string }) =>
      `Your ${p.what} could not be taken in: ${p.why}. The rest is in. Choose the file again later, and what is missing is added.`,
    notUndone: (p: { what: string; why: string }) =>
      `Your ${p.what} could not be taken back: ${p.why}.`,
    notBack: (p: { what: string; why: string }) =>
      `Your ${p.what} could not be brought back: ${p.why}.`,
    why: notKept,
  },
  save: {
    title: 'Save to a file',
    about:
      'One file gets everything in the list above. Nothing is sent: where it goes is up to you.',
    label: 'Name in the file, if you want one',
    hint: 'Your foreman sees it beside your results. Without a name the file says nothing about who you are.',
    press: 'Save to a file',
    saved: (p: { name: string; answers: string }) =>
      `Handed to your browser as ${p.name}${p.answers === '0' ? '' : `, with ${count(p.answers, 'answer', 'answers')}`}. Look for it among your downloads before you clear anything.`,
    lacks: (p: { what: string }) => `The file is without your ${p.what}, which could not be read.`,
    tooLarge:
      'What is kept here is more than a file may hold, which is 25 MB. Delete job sheets that you no longer need, then save again.',
  },
  take: {
    title: 'Take in a file',
    about:
      'Choose a file that was saved here. First you see what it would change; nothing happens until you say so.',
    label: 'File to look at',
    mine: 'Take in your own file only. Your answers and those in the file become one record, and nobody can tell them apart afterward.',
    notRead: (p: { name: string }) =>
      `${p.name} could not be opened. It may have been moved or renamed. Nothing here has changed.`,
    refused: (p: { name: string; sentence: string }) =>
      `${p.name}: ${p.sentence} Nothing here has changed.`,
    about1: (p: { name: string; date: string }) => `${p.name}, saved on ${p.date}.`,
    named: (p: { name: string }) => `It carries the name “${p.name}”.`,
    unnamed: 'It carries no name.',
    nothing: 'Everything in that file is on this device already. There is nothing to take in.',
    compared: 'What would change',
    rows: {
      answers: 'Answers',
      lessons: 'Lessons done',
      plan: 'Plan',
      rehearsal: 'Rehearsal under way',
      rehearsed: 'Rehearsals handed in',
      settings: 'Units, light or dark',
      cases: 'Practice cases',
      columns: 'Log columns',
      jobs: 'Job sheets',
      sheets: 'Transmissions',
      meetings: 'Meetings of your own',
    },
    added: (p: { count: string }) => count(p.count, 'comes in', 'come in'),
    same: (p: { count: string }) => count(p.count, 'is the same on both', 'are the same on both'),
    completed: (p: { count: string }) => count(p.count, 'gets later entries', 'get later entries'),
    differ: (p: { count: string }) => count(p.count, 'differs', 'differ'),
    differKept: (p: { count: string }) =>
      count(p.count, 'differs and stays as it is here', 'differ and stay as they are here'),
    hereOnly: (p: { count: string }) =>
      count(p.count, 'is only here and stays', 'are only here and stay'),
    deleted: (p: { count: string }) =>
      count(p.count, 'was deleted on the other device', 'were deleted on the other device'),
    one: {
      same: 'the same on both',
      added: 'comes in',
      hereOnly: 'only here, and stays',
      differs: 'differs: choose below',
    },
    ahead: (p: { count: string }) =>
      `${count(p.count, 'answer in that file is', 'answers in that file are')} dated after today, so the clock of one device was wrong. Set this one right first if it is this one. Your plan goes by the latest day it has seen.`,
    choose: 'Where the two differ',
    sides: {
      plan: {
        legend: 'Which plan counts?',
        here: (p: { what: string }) => `The one here: ${p.what}`,
        file: (p: { what: string }) => `The one in the file: ${p.what}`,
      },
      rehearsal: {
        legend: 'Which rehearsal goes on?',
        here: 'The one under way here',
        file: 'The one in the file, or none if it was handed in there',
      },
      settings: {
        legend: 'Which units, and light or dark?',
        here: 'As they are set here',
        file: 'As they are in the file',
      },
      cases: {
        legend: 'Which way through the practice cases that differ?',
        here: 'As I worked them here',
        file: 'As they are in the file',
      },
      jobs: {
        legend: 'Which job sheets, where both were changed?',
        here: 'Leave those as they are here',
        file: 'The later entry of each counts',
      },
      sheets: {
        legend: 'Which transmissions, where both were changed?',
        here: 'Leave those as they are here',
        file: 'The later entry of each counts',
      },
      meetings: {
        legend: 'Which meetings, where both were changed?',
        here: 'Leave those as they are here',
        file: 'The later version of each counts',
      },
    },
    lost: {
      title: 'What would be lost here',
      nothing: 'Nothing that is here would be lost.',
      plan: (p: { what: string }) => `Your plan: ${p.what}.`,
      rehearsal: (p: { what: string }) => `${p.what}.`,
      rehearsed: (p: { count: string }) =>
        `${count(p.count, 'rehearsal that was', 'rehearsals that were')} handed in longest ago, because the list holds 20. Answers in the record stay.`,
      settings: 'How units and light or dark are set here.',
      cases: (p: { count: string }) =>
        `Your way through ${count(p.count, 'practice case', 'practice cases')}.`,
      dropped: (p: { count: string }) =>
        `${count(p.count, 'practice case that has', 'practice cases that have')} not been touched for the longest time, because the list holds 120.`,
      replaced: (p: { names: string }) => `Older entries in ${p.names}.`,
      deleted: (p: { names: string }) => `All of ${p.names}, deleted on the other device.`,
    },
    press: 'Take it in',
    leave: 'Leave it',
    done: (p: { answers: string }) =>
      p.answers === '0'
        ? 'It is in.'
        : `It is in, with ${count(p.answers, 'new answer', 'new answers')}.`,
    undo: 'Take it back out',
    undone: 'It is out again. This device has what it had before.',
  },
  remove: {
    title: 'Delete everything',
    about:
      'For a phone that you pass on, or a shop computer that others use. It takes away all that this site has put on this device.',
    ask: 'Delete everything on this device',
    sure: 'All of this goes:',
    also: 'Tables that were worked out for your transmissions go too. They can be worked out again.',
    nothing: 'There is nothing here to delete, except what a fault may have left behind.',
    otherFiles: 'Files that you saved stay where you put them.',
    unreadable: 'What cannot be read goes for good: it cannot be brought back.',
    saveFirst: 'Save to a file first',
    go: 'Yes, delete all of it',
    keep: 'No, keep it',
    gone: 'All of it is deleted. Until you leave this page you can still bring it back.',
    notAll: (p: { why: string }) =>
      `Some of it could not be deleted: ${p.why}. Try it again afterward.`,
    undo: 'Bring it back',
    back: 'It is back.',
  },
};
