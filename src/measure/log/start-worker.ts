import address from './worker.ts?worker&url';
import type { Answer, Ask } from './messages.ts';

// A page whose text may become no script needs a policy to start one; this passes the one address that the build made.
interface TrustedTypes {
  createPolicy(
    name: 'log-reader',
    rules: { createScriptURL(url: string): string },
  ): { createScriptURL(url: string): string };
}
const types = (globalThis as { trustedTypes?: TrustedTypes }).trustedTypes;
const policy = types?.createPolicy('log-reader', {
  createScriptURL: (url) => {
    if (url === address) return url;
    throw new TypeError(`The log reader may not start a script from ${url}.`);
  },
});

export interface Working {
  readonly ask: (ask: Ask) => void;
  readonly stop: () => void;
}

/** A worker of its own for one log: to cancel is to end it. */
export function startWorker(told: (answer: Answer) => void): Working {
  const worker = new Worker(policy?.createScriptURL(address) ?? address, { type: 'module' });
  worker.addEventListener('message', ({ data }: MessageEvent<Answer>) => told(data));
  worker.addEventListener('error', () => told({ kind: 'failed' }));
  return { ask: (ask) => worker.postMessage(ask), stop: () => worker.terminate() };
}
