export const words = {
  tasks: {
    reverse: {
      words: (p: { mostReverse: string }) =>
        `No Reverse, ever, and Drive is fine. A colleague wants the pack. Bring the list to one name in ${p.mostReverse} at most.`,
      hint: 'Two cheap checks can say together what a dear one says alone. Which two have a cause that both of them catch?',
      after: (p: { mostReverse: string; tap: string }) =>
        `${p.mostReverse}: Reverse is asked for, and the line stays where Drive has it, so the boost is lost. The tap would have named it too, in ${p.tap}. The pack is cleared, and nobody has opened anything.`,
    },
    seal: {
      words: (p: { all: string }) =>
        `“It is the seal again.” Find one of the ${p.all} complaints that has a split seal on its list, and take the seal off with one check.`,
      hint: 'Look where something slips when hot, or where a slip has left a code. Then take the check that a slipping clutch would fail.',
      after: (p: { few: string; all: string }) =>
        `The split seal is on ${p.few} of the ${p.all} lists, and one check can take it off there. On the others nobody has to think of it. The complaint says which list you open, never which name stands on it.`,
    },
    end: {
      words: (p: { mostFlare: string }) =>
        `Revs up between second and third. Spend as few minutes as you can, ${p.mostFlare} at most, and stop when no check from outside would shorten the list.`,
      hint: 'Under the picture stands what each answer leaves. Look for the check that leaves the fewest by itself.',
      after: (p: { names: string; leastFlare: string }) =>
        `It can be done in ${p.leastFlare}. Two are left: ${p.names}. Both leak like a gap, so no check from outside tells them apart. Now opening is right, and air on the bench is the reading that decides. Quote the opening, not a part.`,
    },
  },
  reached: {
    minutes: (p: { minutes: string; left: string }) =>
      `${p.minutes} spent, and ${p.left} causes are left.`,
    late: (p: { minutes: string }) => `That took ${p.minutes}. Take one back.`,
    notHere: 'The split seal is not on this list. Look at another complaint.',
    still: 'The split seal is still on the list. Take that check back and try another.',
    many: 'That makes more than one check. Take one back.',
    goes: 'There is still a check that would shorten the list.',
  },
};
