/** What to look for in each fault: apart from the names, since pages that name a fault need not carry it. */
import type { FaultId } from '../../engine/index.ts';

/** What to look for, as the model page prints it (common practice, no source). */
const signatures: Record<FaultId, string> = {
  transferSeal:
    'A thin split leaks hot only. Drive and Reverse together, since they share the seal; high gear is spared.',
  hardLip:
    'Late cold, right when warm, in one range: hard rubber shrinks in the cold and seals again as it warms.',
  clutchControl:
    'Hot, in one range. The scan tool shows the command as asked, and the air test is good.',
  sealingRings: 'Hot, in one range only.',
  pistonSeal: 'Hot, in one range. The air test fails at the case.',
  pumpWear: 'Line low at hot idle, better with engine speed. Every range, late when hot.',
  regulatorBore: 'Line low at hot idle. Every range.',
  pressureControl: 'Line low cold and hot alike, by the same share at any engine speed.',
  filter: 'Cold and at high engine speed, with noise from the pump.',
  lowFluid:
    'The gauge flutters, first cold and with speed. Cooler return falls first, then Reverse at hot idle, then everything.',
  thinFluid: 'Everything leaks a little more when hot.',
  feedRestriction:
    'Slow to fill at any temperature. Low when hot, where even sound rings leak more than the feed brings.',
  openPort: 'Cold and hot alike, in one range, from the day it was left out.',
  frictionWear: 'Pressures are right and it still slips.',
  turbineSensor: 'A code without slip.',
};

export const words = { signatures };
