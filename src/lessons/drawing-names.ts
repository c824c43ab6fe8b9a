/** The drawings that a lesson may show with `<Drawing of="…" />`. Plain names, so that Node reads them without any picture. */

/** Those that print no quantity and stand in their example state. */
export const stillDrawings = [
  'bench-open',
  'bridge-seat',
  'complaint-card',
  'connector-sleeve',
  'converter',
  'convincing-record',
  'electronic-range',
  'filter-cut',
  'filter-build',
  'freeze-frame',
  'gauge-hookup',
  'reach-ladder',
  'hours-or-degrees',
  'log-patterns',
  'log-queue',
  'mechanical-range',
  'open-together',
  'park-pawl',
  'seal-states',
  'speed-sensors',
] as const;

/** Those that print quantities: measured-drawings.tsx draws them from the engine, in each unit system once. */
export const measuredNames = [
  'piston-spring',
  'clutch-released',
  'clutch-applied',
  'transfer-seal-whole',
  'transfer-seal-split',
  'pump-regulator',
  'spool-valve',
  'hydraulic-path',
  'sealing-rings',
  'pan-level',
  'air-rig',
] as const;

export type StillName = (typeof stillDrawings)[number];
export type MeasuredName = (typeof measuredNames)[number];
