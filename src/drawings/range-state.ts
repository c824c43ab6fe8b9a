export type Range = 'P' | 'R' | 'N' | 'D';

export interface RangeState {
  range: Range;
  /** Mechanical only: the cable holds the plate short of its notch. */
  misSet?: boolean | undefined;
  failSafe?: boolean | undefined;
  /** Mechanical fail-safe with a default gear held, instead of venting to Neutral. */
  defaultGear?: boolean | undefined;
  /** Electronic fail-safe while the vehicle still rolls: Neutral first, Park later. */
  rolling?: boolean | undefined;
  /** False: the controller has no power. Then a spring moves what oil held, and nobody decides anything. */
  power?: boolean | undefined;
  /** Paths to draw dead or alive against what follows from the rest: for a fault such as a broken cable. */
  alive?: { cable?: boolean; solenoids?: boolean; selector?: boolean } | undefined;
}

export const rangeExample: RangeState = { range: 'P' };

export const RANGE_NAMES: Record<Range, string> = {
  P: 'Park',
  R: 'Reverse',
  N: 'Neutral',
  D: 'Drive',
};

/** Without power the spring of the electronic kind drops the pawl in once it can; at speed it would only ratchet. */
export const isParked = (s: RangeState, kind: 'electronic' | 'mechanical'): boolean =>
  kind === 'electronic' && (s.failSafe || s.power === false) ? !s.rolling : s.range === 'P';

/** The range whose clutch is fed, or none. */
export function fedRange(s: RangeState, kind: 'electronic' | 'mechanical'): 'R' | 'D' | undefined {
  if (s.alive?.solenoids === false) return undefined;
  if ((s.failSafe || s.power === false) && !(kind === 'mechanical' && s.defaultGear))
    return undefined;
  return s.range === 'R' || s.range === 'D' ? s.range : undefined;
}

export function describeElectronic(s: RangeState): string {
  const parked = isParked(s, 'electronic');
  const fed = fedRange(s, 'electronic');
  const what =
    s.power === false
      ? `The controller has no power: the clutches vent, and the spring of the park actuator ${parked ? 'has pushed the pawl in' : 'pushes the pawl against the turning park gear, where it ratchets until the vehicle is slow'}.`
      : s.failSafe
        ? `The controller is in fail-safe: the clutches vent and it commands ${parked ? 'Park' : 'Neutral, and Park once the vehicle has slowed'}.`
        : `The controller feeds ${fed ? `the ${RANGE_NAMES[fed]} clutch` : 'no clutch'}.`;
  const dead = [
    s.alive?.selector === false ? ' The wire from the selector is dead.' : '',
    s.alive?.solenoids === false ? ' The wires to the clutch solenoids are dead.' : '',
  ].join('');
  const pawl = parked
    ? 'engaged in the park gear'
    : s.power === false
      ? 'not yet engaged'
      : 'released, with oil holding the park actuator back';
  return `Electronic range selection with ${RANGE_NAMES[s.range]} selected. The selector sends a request to the controller and nothing else moves by hand. ${what} The park pawl is ${pawl}.${dead}`;
}

export function describeMechanical(s: RangeState): string {
  const parked = isParked(s, 'mechanical');
  const fed = fedRange(s, 'mechanical');
  const cable = s.misSet
    ? 'The cable is set wrong: its stop is hard against the eye, the detent roller sits beside the notch and the manual valve stands short of its place.'
    : 'The stop sits just past the eye of the cable, not hard against it, and the detent roller sits in its notch.';
  const control =
    s.power === false
      ? `The controller has no power: ${fed ? 'oil alone holds a default gear' : 'the clutches vent'}, and the lever still moves the valve and the pawl.`
      : s.failSafe
        ? `The controller is in fail-safe: it ${fed ? 'holds a default gear at full pressure' : 'vents the clutches'} but cannot move the park pawl.`
        : `The manual valve feeds ${fed ? RANGE_NAMES[fed] : 'no range'}.`;
  const dead = [
    s.alive?.cable === false
      ? ' The cable is broken, so the plate may not stand where the lever does.'
      : '',
    s.alive?.solenoids === false ? ' The wire to the clutch solenoids is dead.' : '',
  ].join('');
  return `Mechanical range selection with the hand lever in ${RANGE_NAMES[s.range]}. The cable turns the detent plate, which moves the manual valve and the park rod. ${cable} ${control} The park pawl is ${parked ? 'engaged in the park gear' : 'released'}.${dead}`;
}
