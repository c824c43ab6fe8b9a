/**
 * What each theory lesson enables a reader to do. The lessons show these texts, the questions name these ids, and the
 * coverage lint counts items against them; so they stand here once, as data.
 */
export interface Objective {
  readonly lesson: string;
  readonly id: string;
  readonly text: string;
}

const of = (lesson: string, prefix: string, ...texts: readonly string[]): readonly Objective[] =>
  texts.map((text, i) => ({ lesson, id: `${prefix}-${i + 1}`, text }));

export const objectives: readonly Objective[] = [
  ...of(
    'what-pressure-does',
    'pressure',
    'Say what pressure is, and work out force from pressure and area.',
    'Work out the torque a clutch holds from pressure, spring, faces, friction and radius.',
    'Say what pressure a clutch needs for a given torque, and why the spring takes its share first.',
    'Tell lost pressure from lost friction by what the gauge and the clutch do.',
  ),
  ...of(
    'hot-fluid-thin-fluid',
    'hot-fluid',
    'Say what kinematic and dynamic viscosity are, and which one drives a leak.',
    'Read from two published numbers, at 40 and 100 °C, how thin a fluid is at any temperature in range.',
    'Compare two fluids by viscosity index.',
    'Say what thin fluid does to a leak and to pump slip.',
  ),
  ...of(
    'thin-gap-open-hole',
    'gap-hole',
    'Tell a gap from a hole by how its leak changes with temperature.',
    'Use the viscous share to say why.',
    'Read holding pressure needed against pressure had, and name the temperature where they cross.',
    'Say why a wide crack leaks cold too.',
    'Say which ranges suffer from a split transfer seal and which are spared.',
  ),
  ...of(
    'pump-and-regulator',
    'pump',
    'Say what the pump delivers at a given speed, and why that is flow and not pressure.',
    'Say who is served first when flow runs short at hot idle, and what gives way.',
    'Tell wear in pump or bore from a low command by going from cold to hot and from idle to 1500 rpm.',
    'Tell a starved pump from a leak.',
  ),
  ...of(
    'regulator-to-clutch',
    'path',
    'Trace the fluid from pump to clutch and name each place where it can get lost.',
    'Say from the place of a leak which ranges it hurts.',
    'Say what the feed hole does to clutch pressure when a leak grows or the feed is restricted.',
    'Tell rings, piston seal, transfer seal and an open port apart by range, temperature and air test.',
  ),
  ...of(
    'two-range-selections',
    'select',
    'Say what moves the manual valve or its solenoids and the park pawl in each kind of range selection.',
    'Say what the controller can and cannot do about slip in each kind.',
    'Say how a cable or lever that is out of adjustment shows itself.',
    'Say how Park is held and released, and make a vehicle safe before working on either kind.',
  ),
  ...of(
    'turbine-must-stop',
    'turbine',
    'Say why the turbine must stop when a range is selected at standstill.',
    'Read a turbine-speed trace and tell a finished engagement from a clutch that slips.',
    'Say why the same crack lets the turbine stop cold and not hot.',
    'Work out the torque a clutch must hold at standstill, and say why a stall test is dangerous.',
  ),
  ...of(
    'what-slip-is',
    'slip',
    'Work out slip from turbine speed, output speed and ratio.',
    'Say which limits and times the training controller checks slip against.',
    'Say what the controller does at the first and at the second failed check.',
    'Tell real slip from a false reading.',
  ),
];

export function objectivesOf(lesson: string): readonly Objective[] {
  return objectives.filter((o) => o.lesson === lesson);
}
