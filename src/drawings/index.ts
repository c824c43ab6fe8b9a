export { CircuitDrawing } from './CircuitDrawing.tsx';
export { circuitExample, circuitFrom, describeCircuit } from './circuit-state.ts';
export type { CircuitState } from './circuit-state.ts';
export {
  ClutchPackDrawing,
  clutchPackExample,
  clutchPackReleased,
  describeClutchPack,
} from './ClutchPack.tsx';
export type { ClutchPackState } from './ClutchPack.tsx';
export {
  ControllerStatesDrawing,
  controllerStatesExample,
  describeControllerStates,
} from './ControllerStates.tsx';
export type { ControllerStateName, ControllerStatesState } from './ControllerStates.tsx';
export {
  ConverterDrawing,
  converterExample,
  describeConverter,
} from './converter/ConverterDrawing.tsx';
export type { ConverterState } from './converter/ConverterDrawing.tsx';
export { ElectronicRangeDrawing } from './ElectronicRange.tsx';
export { HydraulicPathDrawing } from './HydraulicPath.tsx';
export { describeHydraulicPath, hydraulicPathExample } from './hydraulic-path-state.ts';
export type {
  FaultId,
  HydraulicPathState,
  PathCircuit,
  PathCircuitState,
} from './hydraulic-path-state.ts';
export { MechanicalRangeDrawing } from './MechanicalRange.tsx';
export { describeParkPawl, ParkPawlDrawing, parkPawlExample } from './ParkPawlDrawing.tsx';
export type { ParkPawlState } from './ParkPawlDrawing.tsx';
export {
  describePistonSpring,
  PistonSpringDrawing,
  pistonSpringExample,
} from './piston/PistonSpringDrawing.tsx';
export type { PistonSpringState } from './piston/PistonSpringDrawing.tsx';
export {
  describePumpRegulator,
  PumpRegulatorDrawing,
  pumpRegulatorExample,
} from './PumpRegulator.tsx';
export type { PumpRegulatorState } from './PumpRegulator.tsx';
export { describeElectronic, describeMechanical, rangeExample } from './range-state.ts';
export type { Range, RangeState } from './range-state.ts';
export { describeSealingRings, SealingRingsDrawing, sealingRingsExample } from './SealingRings.tsx';
export type { SealingRingsState } from './SealingRings.tsx';
export { describeSpeedSensors, SpeedSensorsDrawing, speedSensorsExample } from './SpeedSensors.tsx';
export type { SpeedSensorsState } from './SpeedSensors.tsx';
export { describeSpoolValve, SpoolValveDrawing, spoolValveExample } from './SpoolValve.tsx';
export type { SpoolValveState } from './SpoolValve.tsx';
export { describeTransferSeal, TransferSealDrawing, transferSealExample } from './TransferSeal.tsx';
export type { TransferSealState } from './TransferSeal.tsx';
export type { Temp } from './scale.ts';
export type { FaultPlace, Grip, WholeCarState } from './whole-car/state.ts';
export { WholeCarDrawing } from './whole-car/WholeCarDrawing.tsx';
