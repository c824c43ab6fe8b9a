import { keeper, type Area, type Keeper } from './envelope.ts';
import type { Form } from './versioned.ts';

export interface Settings {
  readonly units: 'us' | 'si';
  /** `system` follows the device. */
  readonly theme: 'system' | 'light' | 'dark';
}

function parse(data: unknown): Settings | undefined {
  const { units, theme } = (data ?? {}) as Partial<Settings>;
  if (units !== 'us' && units !== 'si') return undefined;
  return theme === 'system' || theme === 'light' || theme === 'dark' ? { units, theme } : undefined;
}

export const settingsForm: Form<Settings> = { name: 'settings', version: 1, parse };

/**
 * boot.js reads the same envelope in <head> before anything is painted, so that a reader of kPa on a
 * dark page never sees a flash of psi on a light one. It looks only into the slot in
 * force: where that is damaged, settings-switch.ts finds the other. It is inlined byte for byte, with its hash in
 * the policy (astro.config.mjs); tests/storage/boot.test.ts holds it to what is written here.
 */
export function settingsKeeper(area?: Area): Keeper<Settings> {
  return keeper({ ...settingsForm, empty: { units: 'us', theme: 'system' }, area });
}
