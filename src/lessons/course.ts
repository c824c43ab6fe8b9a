/** The lessons, planned or written. Once a lesson exists, its own front matter speaks. */
export interface PlannedLesson {
  readonly id: string;
  readonly title: string;
  readonly needs: readonly string[];
  readonly about: string;
}

export const theory: readonly PlannedLesson[] = [
  {
    id: 'what-pressure-does',
    title: 'What pressure does',
    needs: [],
    about: 'Pressure, area and force, and the torque a clutch can hold.',
  },
  {
    id: 'hot-fluid-thin-fluid',
    title: 'Hot fluid, thin fluid',
    needs: [],
    about: 'How much thinner the fluid gets as it warms, and why that is not a fault.',
  },
  {
    id: 'thin-gap-open-hole',
    title: 'Thin gap, open hole',
    needs: ['what-pressure-does', 'hot-fluid-thin-fluid'],
    about:
      'Why a thin crack leaks hot and hardly cold, while an open hole leaks alike at any temperature.',
  },
  {
    id: 'holds-cold-slips-hot',
    title: 'The clutch that lets go hot',
    needs: ['thin-gap-open-hole'],
    about: 'When a leak becomes a fault, and which ranges a split seal takes and spares.',
  },
  {
    id: 'pump-and-regulator',
    title: 'Pump, regulator and hot idle',
    needs: ['holds-cold-slips-hot'],
    about: 'Where the pump’s flow goes, and what gives way when there is not enough.',
  },
  {
    id: 'regulator-to-clutch',
    title: 'From regulator to clutch',
    needs: ['pump-and-regulator'],
    about: 'Feeds, the transfer seal, rings and pistons, and why one seal hurts only some ranges.',
  },
  {
    id: 'cold-hot-and-air',
    title: 'Cold, hot and air',
    needs: ['regulator-to-clutch'],
    about: 'What sits there: gap, port, hard lip or valve, told by cold, by hot and by air.',
  },
  {
    id: 'two-range-selections',
    title: 'Two kinds of range selection',
    needs: ['regulator-to-clutch'],
    about: 'A cable or a controller: what moves what, and who can take the car out of gear.',
  },
  {
    id: 'turbine-must-stop',
    title: 'The turbine must stop',
    needs: ['cold-hot-and-air'],
    about: 'The two seconds after a range is picked, cold beside hot.',
  },
  {
    id: 'how-hard-the-converter-pushes',
    title: 'How hard the converter pushes',
    needs: ['turbine-must-stop'],
    about:
      'What a clutch must hold while the wheels stand, and why a stall test is no way to be sure.',
  },
  {
    id: 'warm-to-the-complaint',
    title: 'Warm it until it does it',
    needs: ['turbine-must-stop'],
    about: 'Why a hot fault goes by temperature and not by the clock, and how to drive there.',
  },
  {
    id: 'what-slip-is',
    title: 'What the controller calls slip',
    needs: ['warm-to-the-complaint', 'two-range-selections'],
    about: 'What the controller sees, how long it waits, and what it does then.',
  },
];

export const workshop: readonly PlannedLesson[] = [
  {
    id: 'the-complaint',
    title: 'The complaint and the drive',
    needs: ['what-slip-is'],
    about: 'What to ask, and how to drive until it does it for you.',
  },
  {
    id: 'live-data',
    title: 'Live data',
    needs: ['the-complaint'],
    about: 'What to log, how often, and what a log cannot show.',
  },
  {
    id: 'codes-are-questions',
    title: 'Codes are questions',
    needs: ['live-data'],
    about: 'What a code asks, what its freeze frame tells, and what Clear erases.',
  },
  {
    id: 'outside-first',
    title: 'Outside first',
    needs: ['the-complaint'],
    about: 'Level, connector, supply and cable: what each look rules out before the pan comes off.',
  },
  {
    id: 'pressures-hot-and-cold',
    title: 'Pressures hot and cold',
    needs: ['live-data'],
    about: 'Pressures in pairs, each beside its command, and what each pair takes off the list.',
  },
  {
    id: 'the-next-best-test',
    title: 'The next best test',
    needs: ['pressures-hot-and-cold', 'codes-are-questions'],
    about: 'Which test tells most for the minutes it takes.',
  },
  {
    id: 'air-on-the-bench',
    title: 'On the bench',
    needs: ['the-next-best-test'],
    about: 'Air, vacuum and clearances: what the open case tells before a part is bought.',
  },
  {
    id: 'parts-that-seal',
    title: 'The seal itself',
    needs: ['air-on-the-bench'],
    about: 'Split, set, swollen, hard or cut: how each looks, and when it leaks.',
  },
  {
    id: 'do-it-together',
    title: 'Do it together',
    needs: ['air-on-the-bench'],
    about: 'What shares the access, the age and the heat, and when the extra hour pays.',
  },
  {
    id: 'whose-parts',
    title: 'Whose parts',
    needs: ['parts-that-seal'],
    about: 'Two parts that look alike, told apart by a number you can take in the shop.',
  },
  {
    id: 'putting-back',
    title: 'Putting it back',
    needs: ['parts-that-seal'],
    about: 'Clean, in order and by hand: what goes wrong on the way back together.',
  },
  {
    id: 'proving-the-repair',
    title: 'Proof, and the customer',
    needs: ['putting-back'],
    about: 'The same test hot, before and after, and how to tell the customer.',
  },
  {
    id: 'other-complaints',
    title: 'Other complaints, same method',
    needs: ['the-next-best-test'],
    about: 'Late, harsh, flare, shudder and the rest: three checks each, and what decides.',
  },
];

export const course: readonly PlannedLesson[] = [...theory, ...workshop];
