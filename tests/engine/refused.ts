import { EngineError } from '../../src/engine/index.ts';

/** What the engine throws at a request that it refuses. */
export function refused(ask: () => unknown): EngineError {
  try {
    ask();
  } catch (thrown) {
    if (thrown instanceof EngineError) return thrown;
    throw thrown;
  }
  throw new Error('It was accepted.');
}
