interface Seen {
  /** The code it stored. */
  code: string;
}

export const words = {
  roles: 'What moves what',
  parts: { hand: 'Your hand', controller: 'The controller', park: 'Park' },
  byWire: 'By wire:',
  byCable: 'By cable:',
  ratioCode: 'the ratio code',
  wire: {
    hand: {
      moves: 'Moves a switch, and nothing else. The controller reads it as a request.',
      misSet: 'Moves a switch. There is no cable here to set wrong, so nothing changes.',
      noPower: 'Moves a switch that nobody reads.',
    },
    controller: {
      noPower: 'Dead. No solenoid works, so the clutches vent and nothing can be selected.',
      parks: (p: Seen) =>
        `It saw slip, raised pressure once, stored ${p.code} and let the clutch go. The car stands, so it selected Park by itself, whatever the selector says.`,
      waits: (p: Seen & { speed: string }) =>
        `It saw slip, raised pressure once, stored ${p.code} and let the clutch go. The car rolls too fast for the pawl: Neutral now, Park once slower than ${p.speed}.`,
      none: 'Feeds no clutch. With none applied there is no slip to see.',
      feeds: (p: { clutch: string }) =>
        `Feeds the ${p.clutch} and watches slip. It can raise pressure, let the clutch go, and move the pawl.`,
    },
    park: {
      in: 'Held by the spring of the actuator: the controller has let the oil out.',
      out: 'Held out by oil through the park solenoid. Lose the oil or the current, and the spring puts it in.',
      sprung:
        'The oil has left the actuator and its spring has pushed the pawl in. To roll the car you need the maker’s release procedure, and brake and chocks first.',
      ratchets:
        'The oil has left the actuator. The spring pushes the pawl at a turning gear, and it ratchets until the car is slow.',
    },
  },
  cable: {
    hand: {
      moves:
        'Pulls the cable. The cable turns the detent plate, and the plate moves the manual valve and the park rod together.',
      misSet:
        'Moves the lever home, but the stop sits hard against the eye of the cable and holds the plate short of its notch. The roller sits on the slope, the valve half over its port. Set right, the stop sits just past the eye, not hard against it (common practice, no source).',
    },
    controller: {
      noPower: 'Dead. Its clutch solenoids are shut off. The lever still moves valve and pawl.',
      drivesHome:
        'Dead. But this box is built so that oil alone holds one gear. It drives, with a hard shift and no help.',
      oneGear: (p: Seen) =>
        `It saw slip, raised pressure once and stored ${p.code}. It holds one gear at full pressure, so that the car can be driven in. It cannot select Park.`,
      parked: (p: Seen) =>
        `It saw slip, raised pressure once and stored ${p.code}. It let the clutch go. The rest your hand did.`,
      letGo: (p: Seen & { range: string }) =>
        `It saw slip, raised pressure once and stored ${p.code}. It let the clutch go. The lever still says ${p.range}, the car is in Neutral and can roll.`,
      none: 'The valve gives it nothing to work with. It can set line pressure and wait.',
      feeds: (p: { range: string }) =>
        `The manual valve has opened the way to ${p.range}. It sets the pressure behind that and watches slip. It can let the clutch go. Valve and pawl are out of its reach.`,
    },
    park: {
      in: 'Held by the cone that the rod has pushed under the pawl. It needs neither oil nor current, and no controller can undo it.',
      out: 'Out, because the lever pulled the rod back. Only the lever puts it in.',
      short:
        'The rod stops short, so the cone is not all the way home under the pawl. Do not trust it on a slope. Chock the wheels.',
    },
  },
  port: {
    name: 'What a mis-set cable does to the clutch',
    table: 'Clutch pressure at idle',
    fluid: 'Fluid',
    right: 'Cable set right',
    now: 'As it is now',
    open: (p: { open: string }) => `Port ${p.open} open`,
    cold: (p: { temp: string }) => `Cold, ${p.temp}`,
    hot: (p: { temp: string }) => `Hot, ${p.temp}`,
    stops: (p: { has: string; time: string }) => `${p.has}, turbine stops after ${p.time}`,
    never: (p: { has: string }) => `${p.has}, turbine does not stop`,
    about: (p: { range: string; need: string }) =>
      `Clutch pressure at idle in the training transmission, with ${p.range} fed, and how long the turbine takes to stop. Taking off needs ${p.need}. A port half shut fills the clutch late at any temperature. Hot, even good rings leak more than a nearly shut port can bring.`,
  },
  caution: {
    lead: 'Caution.',
    text: 'A car that drops to Neutral, or whose cable is being set, can roll. Brake on and wheels chocked before you reach under it or let go of the brake. The maker’s service information says how this one is set and how Park is released by hand.',
  },
};
