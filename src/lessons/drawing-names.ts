/** The drawings that a lesson may show with `<Drawing of="…" />`. Plain names, so that Node reads them without any picture. */

/** Those that print no quantity and stand in their example state. */
export const stillDrawings = [
  'bridge-seat',
  'complaint-card',
  'connector-sleeve',
  'converter',
  'electronic-range',
  'freeze-frame',
  'gauge-hookup',
  'log-patterns',
  'log-queue',
  'mechanical-range',
  'park-pawl',
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
] as const;

export type StillName = (typeof stillDrawings)[number];
export type MeasuredName = (typeof measuredNames)[number];
