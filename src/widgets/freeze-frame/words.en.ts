import type { Line } from '../../cases/frame-list.ts';

interface Counted {
  stores: string;
  faults: string;
}
export const words = {
  title: 'What a code and its frame leave',
  healthy: 'Nothing wrong',
  lines: {
    code: 'Code, Drive',
    other: 'Code, Reverse',
    temp: 'Fluid temperature',
    time: 'Time after selecting',
    speeds: 'Engine and turbine',
    output: 'Output speed',
    command: 'Commanded pressure',
  } satisfies Record<Line, string>,
  readings: {
    code: 'P0731, Gear 1 Incorrect Ratio',
    noCode: 'None stored for first gear',
    noFrame: 'No code, no frame',
    other: 'P0736 too, Reverse Incorrect Ratio',
    noOther: 'None, tried at the same degrees',
    temp: (p: { temp: string }) => p.temp,
    timeSoon: (p: { after: string }) => `${p.after} after Drive, as the brake was let go`,
    timeLater: (p: { after: string }) => `${p.after} after Drive, with throttle`,
    speeds: (p: { engine: string; turbine: string }) => `${p.engine} and ${p.turbine}`,
    output: (p: { output: string }) => p.output,
    command: (p: { command: string }) => p.command,
  },
  erased: 'Erased with the code',
  worth: (p: { bits: string }) => `Worth ${p.bits} bits`,
  controls: {
    fault: 'The car has',
    gone: 'How far gone',
    warm: 'Fluid on the drive',
    cleared: 'Somebody pressed Clear',
    yes: 'cleared, code on the sheet',
    no: 'not cleared',
    read: 'read',
    unread: 'not read',
  },
  list: {
    name: 'The list, and how much speaks for each name',
    off: 'cannot store this',
  },
  predict: {
    question: (p: { faults: string }) =>
      `A car comes in with P0731, “Gear 1 Incorrect Ratio”. We ran all ${p.faults} faults of our list, mild and bad, cold and hot. How many of them can store exactly that code?`,
    options: {
      one: {
        words: 'One: the part that makes first gear',
        why: (p: Counted) =>
          `The name of a code names a check that failed, and no part. Whatever keeps the clutch of first from holding fails the same check: ${p.stores} of ${p.faults} faults can.`,
      },
      few: {
        words: 'Three or four, all in the first-gear circuit',
        why: (p: Counted) =>
          `The circuit of first is one way to it. Pump side, regulator, fluid, plates and a speed sensor are others: ${p.stores} of ${p.faults} can.`,
      },
      most: {
        words: 'Most of them',
        why: (p: Counted) =>
          `${p.stores} of ${p.faults} can, some hot and some in frost. The check knows two speeds and a ratio, so it asks whether they fit. It cannot ask why not.`,
      },
    },
    runLabel: 'Read the code',
  },
  outcome: (p: Counted & { open: string }) =>
    `${p.stores} of ${p.faults} faults can store P0731. With the code read, the list is as open as one of ${p.open} names.`,
  says: {
    whole: (p: { names: string }) => `All ${p.names} names are on the list.`,
    fits: (p: { left: string; names: string; open: string }) =>
      `${p.left} of ${p.names} names can store this. As open as a list of ${p.open}.`,
    one: (p: { name: string }) =>
      `Of our cars only one fault stores this: ${p.name}. Now a reading has to prove it.`,
    none: (p: { left: string; names: string }) =>
      `No code for first on this drive. ${p.left} of ${p.names} names can drive like that.`,
    cleared: (p: { open: string; kept: string }) =>
      `Cleared. The code on the sheet leaves a list as open as ${p.open}; with what you had read it was ${p.kept}.`,
    nothingLost: (p: { open: string }) =>
      `Cleared. The code on the sheet leaves a list as open as ${p.open}, and its frame can never be read.`,
  },
};
