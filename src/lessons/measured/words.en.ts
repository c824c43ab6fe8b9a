/** Under the drawings that print what the engine says. Each says so where a gap is drawn larger than it is. */
export const words = {
  pistonSpring:
    'Fluid pushes the piston to the right, the spring pushes it back. Each arrow stands on the face it pushes, and all three are drawn to one scale.',
  clutchReleased:
    'Released: the spring holds the piston back and the plates run free. The gaps between the plates are drawn larger than they are.',
  clutchApplied: 'Applied: the piston squeezes the plates, and drum and hub turn as one.',
  transferSealWhole:
    'A whole transfer seal carries the fluid from valve body to case and loses none.',
  transferSealSplit:
    'The same seal, split, with hot fluid at idle. What gets out runs along the joint and back to the sump. The crack is drawn far larger than it is, in the seal and under the lens.',
  pumpRegulator:
    'A healthy transmission at hot idle. The pump feeds the line, and what the line does not need leaves through the regulator. The clearances are left out here.',
  spoolValve:
    'A spool valve at work, here one that feeds a clutch which is nearly full. The command pushes one end, clutch pressure and the spring push the other, and the lands open the way to line or to exhaust.',
  hydraulicPath:
    'The whole way, from sump to clutch, with the forward clutch on. It is a map: sizes and distances are not to scale.',
  airRig:
    'Air on a good circuit, wet. What comes in through the hole is what gets past the rings, and the gauge keeps the rest. The way to the drum is shortened, and the lower half is left out.',
  panLevel:
    'One fill, and nothing missing: in the window between the marks, cold below MIN. The pan is invented, and its heights are drawn larger than its widths.',
  sealingRings:
    'Two rings carry the fluid from the still sleeve into the turning shaft. The clutch is full, so what still flows is what gets past the rings. The gap past each ring is drawn far larger than it is.',
};
