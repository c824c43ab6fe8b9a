export { CircuitDrawing } from './CircuitDrawing.tsx';
export { circuitExample, describeCircuit } from './circuit-state.ts';
export type { CircuitState } from './circuit-state.ts';
