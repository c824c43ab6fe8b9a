import type { Test } from '../../diagnosis/index.ts';
import { words as names } from '../../car/words.en.ts';
import type { FaultId } from '../../engine/index.ts';

/** Where and how warm, in a customer's words. */
interface Place {
  range: string;
  circuit: string;
  warm: string;
}
const warm: Readonly<Record<string, string>> = {
  '': '',
  frost: 'in the cold',
  cold: 'cold',
  hot: 'warmed up',
};

/** What a customer is told a test measured. */
const plain: { readonly [K in Test['kind']]: (p: Place) => string } = {
  codes: () => 'Fault codes stored by the car',
  engineOffTurbine: () => 'Check of a speed sensor with the engine off',
  fluidLevel: () => 'Fluid level',
  fluidLook: () => 'Look and smell of the fluid',
  cable: () => 'Adjustment of the shift lever',
  solenoidCurrent: () => 'Electrical current to a control valve',
  fluidCup: () => 'Thickness of the fluid',
  stopTime: (p) => `How long ${p.range} takes to engage, ${p.warm}`,
  takeoffSlip: (p) => `Slip when pulling away in ${p.range}, ${p.warm}`,
  linePressure: (p) => `Main fluid pressure in ${p.range}, ${p.warm}`,
  gaugeFlutter: () => 'Whether the fluid pressure is steady',
  clutchPressure: (p) => `Fluid pressure, ${p.circuit} clutch, ${p.warm}`,
  coolerFlow: (p) => `Flow through the fluid cooler, ${p.warm}`,
  panFilter: () => 'What lay in the fluid pan and filter',
  airTest: () => 'Air test of a part on the bench',
  airWhere: () => 'Where air escaped on the bench',
  boreVacuum: () => 'Vacuum test of a valve',
};

/** What a customer is told a fault is. */
const causes: Readonly<Record<FaultId, string>> = {
  transferSeal: 'a split seal where fluid passes to the clutches',
  hardLip: 'a clutch piston seal that has gone hard',
  clutchControl: 'a control valve that lets the pressure go when it is hot',
  sealingRings: 'worn sealing rings on a turning shaft',
  pistonSeal: 'a cut clutch piston seal',
  pumpWear: 'a worn fluid pump',
  regulatorBore: 'a worn pressure regulator',
  pressureControl: 'a fluid pressure that is set too low by its control',
  filter: 'a clogged fluid filter',
  lowFluid: 'too little fluid',
  thinFluid: 'worn-out or wrong fluid',
  feedRestriction: 'a narrowed fluid passage, or a shift cable out of adjustment',
  openPort: 'a plug or check ball that is missing',
  frictionWear: 'worn clutch plates',
  turbineSensor: 'a speed sensor with a false signal',
};

/** The two pages for paper. */
export const words = {
  title: 'On paper',
  how: 'One page for the file, one for the customer.',
  both: 'Print both pages',
  file: 'Print the one for the file',
  customer: 'Print the one for the customer',
  unjudged: (why: string) =>
    `${why} Printed now, the pages do not say what is right and what is off.`,
  forFile: {
    kicker: 'Job sheet, for the file',
    started: (date: string) => `Started ${date}`,
    printed: (date: string) => `Printed ${date}`,
    complaint: (text: string) => `Complaint: ${text}`,
    noComplaint: 'not entered.',
    phase: (p: { phase: string; day: string }) => `${p.phase}, taken down ${p.day}`,
    readings: 'Readings',
    test: 'Test and conditions',
    showed: 'It showed',
    temperature: 'Fluid',
    typed: 'As typed',
    usual: (temperature: string) => `${temperature}, not read`,
    clash: 'Contradicts another reading.',
    none: 'No readings.',
    causes: 'What fits the readings before the repair',
    cause: (p: { fault: string; share: string }) => `${p.fault}: ${p.share}`,
    left: 'Tests left that tell something, best for their minutes first',
    leftOne: (p: { test: string; minutes: string }) => `${p.test} (${p.minutes} minutes)`,
    weighing: 'Printed before these readings were weighed. Print again in a few seconds.',
    noneLeft: 'No test left is worth its minutes.',
    notMeasured: 'No clutch pressure was measured on this job.',
    repair: 'Repair done',
    nothingDone: 'Nothing entered yet.',
    proof: 'Before and after',
    notes: 'Notes',
    assumed: {
      training:
        'Probabilities go by an invented training transmission. How often faults come and how far readings err are assumptions. The maker’s service information decides.',
      second:
        'Probabilities go by the second invented training transmission. How often faults come and how far readings err are assumptions. The maker’s service information decides.',
      own: 'Probabilities go by a sheet of the shop’s own. How often faults come and how far readings err are assumptions. The maker’s service information decides.',
    },
  },
  forCustomer: {
    kicker: 'For the customer',
    title: 'What we measured and what we did',
    about: (label: string) => `Job: ${label}`,
    complaint: 'What you told us',
    found: {
      title: 'What we found',
      off: (p: { tests: string }) => `These results were off before the repair: ${p.tests}.`,
      right: 'None of our results was off before the repair.',
      unread: 'Nothing was measured before a repair, so this page names no cause.',
      unjudged:
        'These results have not been compared with what they should be, so this page names no cause.',
      clash:
        'Two of our results do not go together. We name no cause until we have measured them again.',
      nothing: 'These tests have not shown us a cause.',
      outside:
        'No single cause that we know of explains these results. We have to look further before we name one.',
      sure: (p: { cause: string }) => `The results point to ${p.cause}.`,
      pair: (p: { first: string; second: string }) =>
        `The results point to two causes together: ${p.first}, and ${p.second}.`,
      open: (p: { likeliest: string }) =>
        `The results alone do not settle the cause. They fit best with ${p.likeliest}.`,
      others: (p: { causes: string }) => `Not ruled out: ${p.causes}.`,
    },
    causes,
    measured: 'What we measured',
    measuredHow: 'The results that can be compared stand side by side.',
    test: 'Test',
    before: 'Before',
    after: 'After',
    notAgain: 'not repeated',
    notBefore: 'not measured',
    off: 'not what it should be',
    done: 'What we did',
    nothingDone: 'No repair has been done yet.',
    notEntered: 'What was done has not been entered on this sheet.',
    proof: 'How we know',
    warm,
    ranges: names.ranges,
    circuits: { ...names.circuits, line: '', transferSeal: '' },
    plain,
    never: 'did not engage in two and a half seconds',
    noCodes: 'none',
    codes: (count: string): string => (count === '1' ? '1 code' : `${count} codes`),
    proofs: {
      none: 'We have not measured again after a repair yet.',
      unjudged:
        'These results have not been compared with what they should be. So this page does not say whether the work has cured the fault.',
      proved:
        'We repeated the test that showed the fault, with the transmission warmed up to the same temperature. The result is now what it should be.',
      partly:
        'We repeated a test that showed the fault, with the transmission warmed up to the same temperature. That result is now what it should be. Other tests that showed the fault are still to be repeated.',
      stillOff:
        'After the work, what is marked above is not yet what it should be. We will tell you what we propose before we go on.',
      notSame:
        'The results after the work are what they should be. The last test still has to be repeated at the temperature of the first one.',
      notHot:
        'The results after the work are what they should be. The test with the transmission fully warmed up is still to be done.',
      nothingWasOff:
        'The results are what they should be, before and after. The complaint itself did not show in these tests.',
    },
    goesBy: {
      training:
        'What a result should be is taken here from a training transmission that was made up for teaching, not from the maker’s figures for your car.',
      second:
        'What a result should be is taken here from a second training transmission that was made up for teaching, not from the maker’s figures for your car.',
      own: 'What a result should be is taken here from the figures on this shop’s own sheet, and from assumed ones where the sheet has none. The maker’s figures for your car decide.',
    },
    next: 'If anything feels as it did before, come back and tell us when it happens: cold or warmed up, in which range, and how long into the drive.',
    sign: 'Date and signature',
  },
};
