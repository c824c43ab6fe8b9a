export const words = {
  tasks: {
    rig: {
      words: (p: { supply: string; hole: string; from: string; to: string; good: string }) =>
        `Unit 2, reverse. Somebody left the rig at ${p.supply}, with a hole of ${p.hole}. Set it up so that it tells good from bad: supply from ${p.from} to ${p.to}, a good sister at ${p.good} or more, and this worn circuit at a sixth of that or less.`,
      hint: 'The valve opens once the supply is under the ceiling. A wide hole feeds a leak so well that the gauge stays up. A narrow one starves a good circuit too.',
      after: (p: { wide: string; usual: string; leaks: string; sound: string }) =>
        `Through the wide hole this circuit holds ${p.wide} and thuds like a good one. Through ${p.usual} it holds ${p.leaks} and its sister ${p.sound}. Percent held belongs to its rig. Write supply and hole beside it.`,
    },
    name: {
      words:
        'Unit 4 read low on the high clutch, hot. Dry, that circuit hisses and does not thud. Find out what it has, with the air on the circuit that you blame, and name it.',
      hint: 'Dry, every circuit hisses. Put fluid in, compare, then look where it comes out.',
      after: (p: { dry: string; sisterDry: string; wet: string; sisterWet: string }) =>
        `A cut piston seal. Dry it held ${p.dry} and its sister ${p.sisterDry}: both hiss. Wet it still holds only ${p.wet}, its sister ${p.sisterWet}, and the fluid comes out in the drum and not at the shaft. So the drum is pulled, and the rings stay in unless their grooves say otherwise.`,
    },
    nothing: {
      words:
        'Unit 5 read low on the forward clutch, hot, and right on reverse. Put air wherever you like, and say what it has, as far as air can tell.',
      hint: 'A leak of its own would hold less than its sister. What does forward hold?',
      after: (p: { held: string; sister: string }) =>
        `Forward holds ${p.held}, its sister ${p.sister}, and the seal holds all. Still forward reads low hot. What fades is the clutch’s own valve, and that lies on the bench in the valve body. Air has cleared the case, cold. Next come that valve’s bore under vacuum and its solenoid, hot.`,
    },
  },
  reached: {
    ceiling: (p: { supply: string; low: string }) =>
      `${p.supply} is over the printed ceiling of ${p.low}, so the valve stays shut.`,
    supply: (p: { supply: string }) => `Supply ${p.supply}.`,
    rig: (p: { worn: string; sound: string }) =>
      `The worn one holds ${p.worn}, its good sister ${p.sound}.`,
    dry: (p: { sister: string }) =>
      `That may be, but dry its sister holds only ${p.sister}. Make it certain.`,
    place: 'That may be. Now put the air on the circuit that you blame, so that you can show it.',
    elsewhere: (p: { where: string }) => `With fluid in, most of it comes out ${p.where}.`,
    alike: (p: { held: string; sister: string }) =>
      `Forward holds ${p.held}, its sister ${p.sister}.`,
  },
};
