export { CircuitDrawing } from './circuit/CircuitDrawing.tsx';
export { circuitExample, circuitFrom, describeCircuit } from './circuit/state.ts';
export type { CircuitState } from './circuit/state.ts';
export { ClutchPackDrawing } from './clutch-pack/ClutchPackDrawing.tsx';
export { clutchPackExample, clutchPackReleased, describeClutchPack } from './clutch-pack/state.ts';
export type { ClutchPackState } from './clutch-pack/state.ts';
export { ComplaintCardDrawing } from './complaint-card/ComplaintCardDrawing.tsx';
export { describeComplaintCard } from './complaint-card/state.ts';
export { ControllerStatesDrawing } from './controller-states/ControllerStatesDrawing.tsx';
export { controllerStatesExample, describeControllerStates } from './controller-states/state.ts';
export type { ControllerStateName, ControllerStatesState } from './controller-states/state.ts';
export { ConverterDrawing } from './converter/ConverterDrawing.tsx';
export { converterExample, describeConverter } from './converter/state.ts';
export type { ConverterState } from './converter/state.ts';
export { HydraulicPathDrawing } from './hydraulic-path/HydraulicPathDrawing.tsx';
export { describeHydraulicPath, hydraulicPathExample } from './hydraulic-path/state.ts';
export type {
  FaultId,
  HydraulicPathState,
  PathCircuit,
  PathCircuitState,
} from './hydraulic-path/state.ts';
export { GaugeHookupDrawing } from './gauge-hookup/GaugeHookupDrawing.tsx';
export { describeGaugeHookup } from './gauge-hookup/state.ts';
export { LogPatternsDrawing } from './log-patterns/LogPatternsDrawing.tsx';
export { describeLogPatterns } from './log-patterns/state.ts';
export { LogQueueDrawing } from './log-queue/LogQueueDrawing.tsx';
export { describeLogQueue, logQueueExample } from './log-queue/state.ts';
export type { LogQueueState } from './log-queue/state.ts';
export { ParkPawlDrawing } from './park-pawl/ParkPawlDrawing.tsx';
export { describeParkPawl, parkPawlExample } from './park-pawl/state.ts';
export type { ParkPawlState } from './park-pawl/state.ts';
export { PistonSpringDrawing } from './piston/PistonSpringDrawing.tsx';
export { describePistonSpring, pistonSpringExample } from './piston/state.ts';
export type { PistonSpringState } from './piston/state.ts';
export { PumpRegulatorDrawing } from './pump-regulator/PumpRegulatorDrawing.tsx';
export { describePumpRegulator, pumpRegulatorExample } from './pump-regulator/state.ts';
export type { PumpRegulatorState } from './pump-regulator/state.ts';
export { ElectronicRangeDrawing } from './range/ElectronicRangeDrawing.tsx';
export { MechanicalRangeDrawing } from './range/MechanicalRangeDrawing.tsx';
export { describeElectronic, describeMechanical, rangeExample } from './range/state.ts';
export type { Range, RangeState } from './range/state.ts';
export type { Temp } from './scale.ts';
export { SealingRingsDrawing } from './sealing-rings/SealingRingsDrawing.tsx';
export { describeSealingRings, sealingRingsExample } from './sealing-rings/state.ts';
export type { SealingRingsState } from './sealing-rings/state.ts';
export { SpeedSensorsDrawing } from './speed-sensors/SpeedSensorsDrawing.tsx';
export { describeSpeedSensors, speedSensorsExample } from './speed-sensors/state.ts';
export type { SpeedSensorsState } from './speed-sensors/state.ts';
export { SpoolValveDrawing } from './spool-valve/SpoolValveDrawing.tsx';
export { describeSpoolValve, spoolValveExample } from './spool-valve/state.ts';
export type { SpoolValveState } from './spool-valve/state.ts';
export { TransferSealDrawing } from './transfer-seal/TransferSealDrawing.tsx';
export { describeTransferSeal, transferSealExample } from './transfer-seal/state.ts';
export type { TransferSealState } from './transfer-seal/state.ts';
export type { FaultPlace, Grip, WholeCarState } from './whole-car/state.ts';
export { WholeCarDrawing } from './whole-car/WholeCarDrawing.tsx';
