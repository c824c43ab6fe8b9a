import type { COMPLAINTS, ComplaintId } from '../../cases/complaints.ts';

interface Minutes {
  minutes: string;
}
interface First {
  twice: string;
  sister: string;
  level: string;
  few: string;
  all: string;
  drive: string;
  reverse: string;
}
/** Of each complaint: its name, its causes, and what each check is called and can say, in the order of the list. */
type ComplaintWords<Id extends ComplaintId> = {
  readonly name: string;
  readonly causes: Readonly<Record<(typeof COMPLAINTS)[Id]['causes'][number], string>>;
  readonly checks: Readonly<
    Record<
      keyof (typeof COMPLAINTS)[Id]['checks'],
      { readonly name: string; readonly says: readonly string[] }
    >
  >;
};

const seal = 'Split transfer seal';
const level = 'Level low';
const filter = 'Filter choked';

export const words = {
  title: 'Three checks',
  complaints: {
    lateCold: {
      name: 'Late on frosty mornings, right when warm',
      causes: {
        drainBack: 'Fluid drained back overnight',
        hardLip: 'Hard piston lip, forward',
        frost: 'Nothing wrong: frost is slow',
        lowLevel: level,
        filter,
      },
      checks: {
        twice: {
          name: 'Pick Drive twice in the frost, minutes apart',
          says: ['late once, then on time', 'the second is like the first'],
        },
        reverse: {
          name: 'Reverse timed beside Drive, in the frost',
          says: ['Drive is late, Reverse is not', 'the two are alike'],
        },
        sister: {
          name: 'A sister car, the same morning',
          says: ['slower than the sister', 'like the sister'],
        },
        level: { name: 'Level in its window', says: ['low', 'right'] },
      },
    },
    harsh: {
      name: 'Bangs into gear',
      causes: {
        idleHigh: 'Idle too high',
        learnLost: 'Learned values lost',
        noCurrent: 'No current at the line solenoid',
        stuckValve: 'Regulator valve stuck',
        play: 'Play in mounts or driveline',
      },
      checks: {
        idle: { name: 'Idle speed, beside the maker’s', says: ['too high', 'right'] },
        learned: { name: 'Learned values', says: ['all at zero', 'learned'] },
        current: {
          name: 'Current at the line solenoid',
          says: ['none', 'as commanded'],
        },
        line: {
          name: 'Line against its command, idle',
          says: ['at its maximum', 'as commanded'],
        },
      },
    },
    flare: {
      name: 'Revs up between second and third',
      causes: {
        comingLeak: 'Clutch of third leaks at its rings',
        accumulator: 'Accumulator seal leaks',
        comingPlates: 'Clutch of third worn',
        goingEarly: 'Clutch of second lets go early',
        falseSpeed: 'A speed reading is false',
      },
      checks: {
        learned: {
          name: 'Learned fill of the coming clutch',
          says: ['at its limit', 'in the middle'],
        },
        speeds: {
          name: 'All speeds, logged over the shift',
          says: ['one jumps by itself', 'all rise together'],
        },
        warmth: {
          name: 'The same shift, cold and hot',
          says: ['right cold, flares hot', 'alike'],
        },
        taps: {
          name: 'Both taps during the shift',
          says: ['the coming one is late', 'the going one drops early', 'both right'],
        },
      },
    },
    shudder: {
      name: 'Shudders at a steady speed',
      causes: {
        misfire: 'The engine misfires',
        fluid: 'Fluid worn out',
        lining: 'Converter clutch lining',
        tire: 'Tire or driveshaft',
        mount: 'Engine mount worn',
      },
      checks: {
        misfire: { name: 'Misfire counts while it shakes', says: ['they climb', 'none'] },
        gear: {
          name: 'Same road speed, one gear lower',
          says: ['it shakes the same', 'it changes'],
        },
        unlocked: {
          name: 'Same drive, converter clutch off',
          says: ['it stops', 'it goes on'],
        },
        fluid: { name: 'New fluid, the maker’s way, and drive', says: ['gone', 'no better'] },
      },
    },
    noReverse: {
      name: 'No Reverse, and Drive is fine',
      causes: {
        range: 'Reverse is never asked for',
        boost: 'Reverse boost lost',
        leak: 'Reverse circuit open at a plug',
        valve: 'Reverse valve stuck shut',
        pack: 'Reverse pack worn out',
      },
      checks: {
        range: { name: 'Range sensor and lever', says: ['never shows Reverse', 'shows Reverse'] },
        line: { name: 'Line in Reverse, hot, idle', says: ['as in Drive', 'higher than Drive'] },
        tap: {
          name: 'Reverse tap, hot, idle',
          says: ['has its command', 'has what Drive gets', 'far below that'],
        },
        air: { name: 'Air on the bench, body off', says: ['escapes', 'holds'] },
      },
    },
    oneGear: {
      name: 'Drive slips hot, the rest is fine',
      causes: {
        seal,
        rings: 'Forward rings worn',
        valve: 'Forward solenoid valve fades',
        hole: 'Check ball missing',
        plates: 'Forward pack worn',
      },
      checks: {
        reverse: { name: 'Apply chart, then Reverse hot', says: ['late too', 'on time'] },
        solenoid: {
          name: 'Solenoid swapped with its sister',
          says: ['the slip moves along', 'the slip stays'],
        },
        line: { name: 'Line in Drive, hot, idle', says: ['has its command'] },
        tap: {
          name: 'Forward tap, cold and hot, idle',
          says: ['right both times', 'low both times', 'right cold, low hot'],
        },
      },
    },
    hot: {
      name: 'Runs hot',
      causes: {
        falseTemp: 'Temperature sensor reads high',
        cooler: 'Cooler blocked',
        neverLocks: 'Converter clutch never locks',
        seal: 'Split seal: a clutch slips',
        load: 'Nothing wrong: the trailer',
      },
      checks: {
        hand: {
          name: 'A second thermometer beside the reading',
          says: ['cooler than it says', 'they agree'],
        },
        flow: { name: 'Cooler return, the maker’s test', says: ['slow', 'right'] },
        log: {
          name: 'Log: converter clutch, and slip',
          says: ['converter clutch never on', 'a clutch slips', 'locks, and no slip'],
        },
        light: { name: 'Same road without the trailer', says: ['stays cool', 'hot again'] },
      },
    },
    whine: {
      name: 'Whines',
      causes: {
        bearing: 'Wheel bearing or final drive',
        belt: 'Belt, pulley or alternator',
        lowLevel: level,
        filter,
        pump: 'Pump worn',
      },
      checks: {
        park: {
          name: 'Revs in Park: does it follow the engine?',
          says: ['silent: it follows the road', 'it follows the engine'],
        },
        listen: {
          name: 'Listen at the belt and at the case',
          says: ['loudest at the belt', 'loudest at the case'],
        },
        line: {
          name: 'Line commanded up and down, in Park',
          says: ['louder with the line', 'no different'],
        },
        level: { name: 'Level in its window', says: ['low', 'right'] },
      },
    },
    stuck: {
      name: 'Stuck in one gear',
      causes: {
        supply: 'Supply to the controller low',
        ground: 'Ground bad',
        plug: 'Fluid in the plug',
        range: 'Range sensor',
        seal: 'Split seal: it slipped and gave up',
      },
      checks: {
        codes: {
          name: 'Codes with their freeze frames',
          says: ['supply low', 'several circuits', 'range sensor', 'gear ratio'],
        },
        supply: { name: 'Supply at the plug, under load', says: ['low', 'right'] },
        ground: { name: 'Ground drop, under load', says: ['too much', 'right'] },
        plug: { name: 'Plug pulled and looked at', says: ['wet', 'dry'] },
      },
    },
    code: {
      name: 'A slip code, and it drives like new',
      causes: {
        battery: 'The battery was flat once',
        floor: 'Turbine sensor never reads zero',
        dropout: 'A speed signal drops out',
        wheel: 'Other tires than it was told',
        seal: 'Split seal, only beginning',
      },
      checks: {
        frame: {
          name: 'Freeze frame: supply, gear, degrees',
          says: ['supply was low', 'supply was right'],
        },
        stand: {
          name: 'Turbine speed, in Drive on the brake',
          says: ['never gets to zero', 'gets to zero'],
        },
        harness: {
          name: 'Fast log while the harness is moved',
          says: ['drops to zero', 'steady'],
        },
        gears: {
          name: 'Slip in every gear, cold and hot',
          says: [
            'the same share in all',
            'single samples drop',
            'one gear, hot',
            'none on the road',
          ],
        },
      },
    },
  } satisfies { readonly [Id in ComplaintId]: ComplaintWords<Id> },
  said: (p: { said: string; read: string }) => `${p.said} (${p.read})`,
  both: (p: { first: string; second: string }) => `${p.first}, ${p.second}`,
  before: (p: { minutes: string; can: string }) => `${p.minutes}. Can say: ${p.can}.`,
  after: (p: { said: string }) => `It said: ${p.said}.`,
  checks: 'Checks',
  list: {
    name: 'The causes, and until when each stayed on the list',
    off: (p: { until: string }) => `off the list after ${p.until}`,
  },
  controls: {
    complaint: 'Complaint',
    car: 'Car with it',
    taken: 'Checks taken',
    number: (p: { number: string }) => `Car ${p.number}`,
  },
  predict: {
    question: 'The winter car: which check, taken first, brings you to one name soonest?',
    options: {
      seal: {
        words: 'None: late is late, our split seal again',
        why: (p: First) =>
          `A split seal is worst hot, and this car is right when warm. Of the ten complaints here it is on the list of ${p.few}. The word “late” names no part.`,
      },
      level: {
        words: 'The level, in its window',
        why: (p: First) =>
          `It takes one name off and needs the car warm first. Begun with it, you are there in ${p.level} on the average. It still comes before any gauge.`,
      },
      sister: {
        words: 'A sister car, the same morning',
        why: (p: First) =>
          `It tells what frost does to any car from a fault, and someone has to bring that car: ${p.sister} on the average. Take it second or third.`,
      },
      twice: {
        words: 'Drive twice in the frost: hours or degrees?',
        why: (p: First) =>
          `Five minutes, and it asks what no other check asks: the second time it is as cold, but it has not stood. Begun with it, ${p.twice} on the average.`,
      },
    },
    runLabel: 'Take it, then Reverse',
  },
  outcome: (p: First) =>
    `Minutes to one name, on the average: Drive twice first ${p.twice}, sister first ${p.sister}, level first ${p.level}. This car took ${p.drive} both times, and Reverse ${p.reverse}.`,
  says: {
    none: (p: { all: string }) => `All ${p.all} causes are on the list, and nothing is checked.`,
    left: (p: Minutes & { left: string; all: string }) =>
      `${p.minutes}, and ${p.left} of ${p.all} causes are left.`,
    one: (p: Minutes & { name: string }) => `${p.minutes}, and one name is left: ${p.name}.`,
    nothing: 'The last check took nothing off.',
    end: (p: { names: string }) => `No check here tells them apart: ${p.names}.`,
  },
};
