interface Pressure {
  pressure: string;
}

export const words = {
  title: { released: 'Clutch pack, released', applied: 'Clutch pack, applied' },
  released: (p: Pressure) => `Released, ${p.pressure}`,
  applied: (p: Pressure) => `Applied, ${p.pressure}`,
  carries: (p: { torque: string }) => `carries ${p.torque}`,
  free: 'free',
  drum: 'Drum',
  steel: 'Steel plate',
  friction: 'Friction plate',
  snapRing: 'Snap ring',
  pressurePlate: ['Pressure', 'plate'],
  hub: 'Hub',
  retainer: 'Retainer',
  drives: 'drives',
  driven: 'is driven',
  oil: 'Oil in',
  seals: 'Piston seals, in and out',
  describe: {
    released: (p: Pressure) =>
      `Clutch pack released, with ${p.pressure} behind the piston. The return spring holds the piston back, there is clearance between the plates, and drum and hub turn free of each other.`,
    applied: (p: Pressure) =>
      `Clutch pack applied. ${p.pressure} behind the piston squeezes the plates against the pressure plate and its snap ring.`,
    holds: 'The clutch holds: drum and hub turn as one.',
    slips: 'The clutch slips: the plates rub.',
    carries: (p: { torque: string }) => `It can carry ${p.torque}.`,
  },
};
