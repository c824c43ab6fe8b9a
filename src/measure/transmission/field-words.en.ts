/** What each number of a sheet is in the trade's words, and where service information has it. */
import type { FieldGroup } from '../../own-sheet/fields.ts';

interface Said {
  readonly label: string;
  readonly where: string;
}
const notPrinted = 'Not printed. Leave it unless you have measured it.';
const asPart = 'In percent of what the training transmission has.';

/** Of each clutch, after the name of its circuit. */
const clutch = {
  area_cm2: {
    label: 'Piston area',
    where:
      'Rarely printed. Measure the piston: the area of its outer circle less that of the inner one.',
  },
  faces: {
    label: 'Friction faces',
    where: 'Parts list or overhaul section: two for each lined plate.',
  },
  radius_mm: {
    label: 'Mean friction radius',
    where: 'Measure a lined plate: from the center to the middle of the lining.',
  },
  spring_N: {
    label: 'Return spring force',
    where: 'Spring table of the overhaul section, all springs together, piston applied.',
  },
  stroke_cm3: {
    label: 'Fluid to fill it',
    where: 'Piston area times piston travel, which is near the clutch clearance.',
  },
} as const;

const fields: Readonly<Record<string, Said>> = {
  'ratios.first': {
    label: 'First gear ratio',
    where: 'Specifications, table of gear ratios.',
  },
  'ratios.reverse': { label: 'Reverse gear ratio', where: 'The same table.' },
  'ratios.third': {
    label: 'Ratio of the gear that the high clutch makes',
    where: 'The same table. On the training transmission it is third.',
  },
  finalDrive: { label: 'Final drive ratio', where: 'Specifications, or the tag on the axle.' },
  idle_rpm: {
    label: 'Idle speed',
    where: 'Engine specifications, warm, in gear.',
  },
  'commands.idleLine_kPa': {
    label: 'Line pressure, idle',
    where: 'Line pressure chart of the diagnosis section, Drive at idle.',
  },
  'commands.idleClutch_kPa': {
    label: 'Clutch pressure, idle',
    where: 'Clutch pressure chart, or the command that a scan tool shows in Drive at idle.',
  },
  'commands.load_rpm': {
    label: 'Engine speed of the pressure test under load',
    where: 'The pressure test procedure, brake held.',
  },
  'commands.loadLine_kPa': {
    label: 'Line pressure, under load',
    where: 'Line pressure chart, Drive at that speed.',
  },
  'commands.loadClutch_kPa': {
    label: 'Clutch pressure, under load',
    where: 'Clutch pressure chart, or the command that a scan tool shows.',
  },
  'commands.reverseFactor': {
    label: 'Boost of Reverse',
    where: 'Line pressure chart: the figure for Reverse divided by the one for Drive.',
  },
  'clutch.friction': {
    label: 'Friction coefficient of the linings',
    where: 'Data of the lining maker, running in fluid.',
  },
  'clutch.compliance_m3Pa': {
    label: 'Give of a filled clutch circuit',
    where: `${asPart} More where it has an accumulator.`,
  },
  'pump.displacement_cm3': {
    label: 'Pump displacement, each turn',
    where: 'Pump specifications, or its flow divided by its speed.',
  },
  'pump.slip': { label: 'Slip of a healthy pump', where: `${asPart} More for wide clearances.` },
  'pump.suction_kPa': { label: 'Pressure to spare at the pump inlet', where: notPrinted },
  'pump.filter_perM3': {
    label: 'Resistance of filter and pick-up',
    where: `${asPart} Less for a large filter.`,
  },
  'feed.hole_mm': {
    label: 'Feed hole of a clutch, diameter',
    where: 'Orifice sizes of the separator plate.',
  },
  'feed.passage_perM3': {
    label: 'Resistance of the feed passage',
    where: `${asPart} More for a long or narrow one.`,
  },
  'feed.band_kPa': {
    label: 'Shortfall at which the regulating valve stands wide open',
    where: notPrinted,
  },
  'line.bleedHole_mm': {
    label: 'Bleeds and lubrication off the line, as one hole',
    where: 'Orifice sizes of valve body and solenoids: one hole of the same area in all.',
  },
  'line.clearanceWidth_mm': {
    label: 'Clearances that the line always feeds, width in all',
    where: notPrinted,
  },
  'line.clearanceHeight_um': { label: 'The same, height', where: notPrinted },
  'line.clearanceLength_mm': {
    label: 'The same, along the flow',
    where: notPrinted,
  },
  'line.boreWidth_mm': {
    label: 'Regulator valve, way around a land',
    where: 'Measure the valve: diameter of a land times 3.14.',
  },
  'line.boreLength_mm': {
    label: 'Regulator valve, length of that land',
    where: 'Measure the valve.',
  },
  'rings.width_mm': {
    label: 'Sealing rings of a clutch, way around all of them',
    where: 'Measure: diameter of a ring times 3.14, times their number.',
  },
  'rings.height_um': {
    label: 'Clearance of a healthy ring',
    where: 'Ring clearance in the overhaul section; what leaks is about the half of it.',
  },
  'rings.length_mm': { label: 'Width of a ring', where: 'Measure the ring.' },
  'seal.width_mm': { label: 'A split in the transfer seal, along the lip', where: notPrinted },
  'seal.length_mm': {
    label: 'Transfer seal, thickness of the lip',
    where: 'Measure a new seal.',
  },
  'piston.sealWidth_mm': { label: 'A cut in a piston seal, along the lip', where: notPrinted },
  'piston.sealLength_mm': {
    label: 'Piston seal, thickness of the lip',
    where: 'Measure a new seal.',
  },
  'commands.clutchMargin': {
    label: 'Clutch command over what is needed',
    where: notPrinted,
  },
  'commands.clutchLeast_kPa': {
    label: 'Least clutch command',
    where: 'The lowest that a scan tool ever shows with the clutch on.',
  },
  'commands.clutchMost_kPa': {
    label: 'Most clutch command',
    where: 'Pressure chart, or the highest that a scan tool shows.',
  },
  'commands.lineLead_kPa': {
    label: 'Line command above clutch command',
    where: 'Scan tool: the one less the other.',
  },
  'commands.lineLeast_kPa': { label: 'Least line command', where: 'Line pressure chart.' },
  'converter.capacity': {
    label: 'Converter capacity',
    where: 'Stall speed divided by the square root of the engine’s torque at that speed.',
  },
  'converter.torqueRatio': {
    label: 'Converter torque ratio at stall',
    where: 'Converter specifications.',
  },
  'inertia.engine_kgm2': { label: 'Inertia of engine and converter', where: notPrinted },
  'inertia.turbine_kgm2': { label: 'Inertia of the turbine', where: notPrinted },
  'vehicle.mass_kg': { label: 'Mass of the vehicle', where: 'Its papers.' },
  'vehicle.wheelRadius_m': {
    label: 'Wheel radius',
    where: 'From the hub to the floor, as it stands.',
  },
  'vehicle.drag_N': { label: 'Rolling drag', where: notPrinted },
  'sump.fill_L': { label: 'Fluid in the transmission', where: 'Capacities, the total fill.' },
  'sump.spare_L': {
    label: 'Fluid above the pick-up, cold and standing',
    where: notPrinted,
  },
  'sump.pullDown_L': {
    label: 'Fluid that each 1000 rpm pull down at the pick-up',
    where: notPrinted,
  },
  'cooler.pressure_kPa': { label: 'Pressure across the cooler', where: 'Cooler flow test.' },
  'cooler.resistance_perM3': {
    label: 'Resistance of the cooler',
    where: `${asPart} Less for a large cooler.`,
  },
  'fluid.kv40_cSt': {
    label: 'Kinematic viscosity at 40 °C (104 °F)',
    where: 'Data sheet of the fluid.',
  },
  'fluid.kv100_cSt': {
    label: 'Kinematic viscosity at 100 °C (212 °F)',
    where: 'Data sheet of the fluid.',
  },
  'fluid.density15_kgm3': {
    label: 'Density at 15 °C (59 °F)',
    where: 'Data sheet of the fluid.',
  },
};

const groups: Readonly<Record<FieldGroup, { readonly title: string; readonly how: string }>> = {
  ratios: {
    title: 'Ratios and final drive',
    how: 'Printed in every specification.',
  },
  commands: {
    title: 'Pressures commanded, and idle',
    how: 'What the maker’s pressure chart says a healthy one has.',
  },
  areas: {
    title: 'Clutch pistons',
    how: 'With these a pressure becomes a torque.',
  },
  clutches: {
    title: 'Clutches: faces, radius, spring, stroke',
    how: 'They decide when a clutch holds, and how long it takes to fill.',
  },
  pump: {
    title: 'Pump and filter',
    how: 'How much fluid there is to lose, and from what speed on.',
  },
  feed: {
    title: 'Feed holes and bleeds',
    how: 'A leak starves a clutch when more leaves than the feed hole lets in.',
  },
  leaks: {
    title: 'Gaps: line, rings, seals',
    how: 'Where a healthy transmission already loses fluid, and how large a leak can become.',
  },
  rules: {
    title: 'Limits of the controller’s commands',
    how: 'Between these it commands pressure as it believes the torque needs it.',
  },
  converter: { title: 'Converter and inertia', how: 'What the clutch has to stop and to hold.' },
  vehicle: { title: 'Vehicle', how: 'How it pulls away once the clutch holds.' },
  sump: { title: 'Fill and cooler', how: 'How a low level and a cooler test read.' },
  fluid: { title: 'Fluid', how: 'What it is filled with decides how much a gap loses hot.' },
};

export const words = {
  fields,
  clutch,
  groups,
  /** A number of one clutch: what it is, then whose. */
  ofClutch: (p: { label: string; circuit: string }) => `${p.label}, ${p.circuit}`,
  assumed: (value: string) => `assumed: ${value}`,
  unread: 'not taken yet',
  /** A button: the middle of a range that was typed. */
  use: (value: string) => `Use ${value}`,
  assumedShort: 'assumed',
  yours: 'yours',
  chart: {
    title: 'Which clutch is on in which range',
    how: 'Apply chart of the service information. Here a clutch goes by what it does: forward is the one that is on in first, reverse the one in Reverse, high the one that makes the gear above them. Brakes and bands are left out.',
    gears: {
      R: 'Reverse',
      '1': 'First',
      '2': 'Second',
      '3': 'Third, or the gear of the high clutch',
      '4': 'Fourth',
    },
    seal: 'Which of them pass through the transfer seal',
    sealHow:
      'Oil circuit diagram: the circuits that cross from the case or the pump cover into the shaft at the seal.',
    circuits: { forward: 'forward', reverse: 'reverse', high: 'high' },
    again: (what: string) => `Back to assumed: ${what}`,
    againShort: 'Back to assumed',
  },
  fluid: {
    label: 'Class of fluid',
    where: 'Fluid specification, or the data sheet of what is in it.',
    assumed: (fluid: string) => `${fluid} (assumed)`,
    own: 'By its data sheet',
  },
  /** Said at a field; what was typed is read in the units that it was typed in. */
  wrong: {
    noCircuit: 'No clutch is on in this range, so nothing would drive. Tick at least one.',
    noSealed: 'Tick at least one: without a circuit through it there is no transfer seal to split.',
    noFluid: 'There is no such class of fluid here. Choose one of the list.',
    aboveLine: (p: { clutch: string; line: string }) =>
      `The clutch is commanded to ${p.clutch} and the line to ${p.line}. A clutch cannot have more than the line that feeds it.`,
    leastAboveMost: (p: { least: string; most: string }) =>
      `The least command, ${p.least}, is above the most, ${p.most}.`,
    band: (p: { band: string; least: string }) =>
      `${p.band} is as much as the lowest clutch command, ${p.least}. The valve would never close; it has to be less.`,
    spring: (p: { force: string; takes: string; least: string }) =>
      `A spring of ${p.force} on this piston takes ${p.takes}. The lowest clutch command is ${p.least}, so the clutch would never apply.`,
    mustHave: (p: { gear: string; circuit: string }) =>
      `${p.gear} needs the ${p.circuit} clutch: that is what makes it the ${p.circuit} one here.`,
    thinsNot: (p: { at40: string; at100: string }) =>
      `It would have ${p.at100} hot and ${p.at40} warm. Every fluid thins as it heats up; look whether the two are swapped.`,
    other: 'This does not go together with another number of the sheet. Look at both again.',
  },
};
