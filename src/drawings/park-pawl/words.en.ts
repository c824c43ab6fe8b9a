export const words = {
  title: {
    cable: {
      in: 'Park pawl moved by a cable, engaged',
      partly: 'Park pawl moved by a cable, part way in',
      out: 'Park pawl moved by a cable, released',
    },
    controller: {
      in: 'Park pawl moved by the controller, engaged',
      partly: 'Park pawl moved by the controller, part way in',
      out: 'Park pawl moved by the controller, released',
    },
  },
  onShaft: 'on its shaft',
  rod: 'Rod',
  solenoid: 'solenoid',
  pushes: 'spring pushes to Park',
  holdsOut: 'oil holds it out',
  guide: 'Guide',
  notHome: 'Not home',
  describe: {
    in: "Park pawl engaged. The cone sits between guide and pawl and holds the pawl's tooth in the park gear.",
    out: 'Park pawl released. The cone is drawn back and the return spring lifts the pawl clear of the park gear.',
    partly: (p: { share: string }) =>
      `Park pawl ${p.share} of its way in: the cone is not home and Park is not safe.`,
    cable:
      'The hand, through the cable and the detent plate, moves the rod; the controller has no say in it.',
    controller:
      'The controller moves the rod: a spring in the actuator pushes to Park, oil through a solenoid holds it out.',
  },
};
