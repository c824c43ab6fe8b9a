// A page whose text may become no script needs a policy to start one; this passes the one address that the build made.
interface TrustedTypes {
  createPolicy(
    name: string,
    rules: { createScriptURL(url: string): string },
  ): { createScriptURL(url: string): string };
}

export interface Working<Ask> {
  readonly ask: (ask: Ask) => void;
  readonly stop: () => void;
}

/** Starts workers at one address, each for one piece of work: to cancel is to end it. The page has to name the policy. */
export function workerAt<Ask, Answer>(policyName: string, address: string, failed: Answer) {
  const types = (globalThis as { trustedTypes?: TrustedTypes }).trustedTypes;
  const policy = types?.createPolicy(policyName, {
    createScriptURL: (url) => {
      if (url === address) return url;
      throw new TypeError(`The policy ${policyName} may not start a script from ${url}.`);
    },
  });
  return (told: (answer: Answer) => void): Working<Ask> => {
    const worker = new Worker(policy?.createScriptURL(address) ?? address, { type: 'module' });
    worker.addEventListener('message', ({ data }: MessageEvent<Answer>) => told(data));
    worker.addEventListener('error', () => told(failed));
    return { ask: (ask) => worker.postMessage(ask), stop: () => worker.terminate() };
  };
}
