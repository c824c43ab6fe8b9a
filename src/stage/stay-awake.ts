/** Keeps the screen lit until it is called off. An old browser cannot; its screen may then go dark by itself. */
export function stayAwake(): () => void {
  const { wakeLock } = navigator as Partial<Navigator>;
  let lock: Promise<WakeLockSentinel | undefined> | undefined;
  // A browser lets the lock go whenever the tab is out of sight.
  const take = (): void => {
    if (document.visibilityState === 'visible')
      lock = wakeLock?.request('screen').catch(() => undefined);
  };
  take();
  document.addEventListener('visibilitychange', take);
  return () => {
    document.removeEventListener('visibilitychange', take);
    void lock?.then((held) => held?.release());
  };
}
