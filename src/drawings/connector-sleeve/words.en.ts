/** A label of two lines is a list of two; '*' makes a line strong. */
export const words = {
  title: 'The connector sleeve, cut open',
  inside: ['inside:', 'fluid'],
  outside: ['outside'],
  case: ['case'],
  rings: ['sleeve rings,', 'gone hard'],
  sleeve: ['sleeve'],
  plug: ['plug'],
  wires: ['to the controller'],
  past: ['*1 past the rings:', 'a drip on the case'],
  through: ['*2 past the pins: oil in the', 'plug, and along the wires'],
  describe:
    'The wall of the case cut open where the wires go through. A plastic sleeve sits in its bore on two rubber rings, and the plug is pushed into it from outside. Rings that have gone hard let fluid by, and it drips from the case under the plug. A sleeve that leaks at its pins lets fluid into the plug, and from there it creeps along the wires.',
};
