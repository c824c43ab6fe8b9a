import { keeper, type Area, type Keeper } from './envelope.ts';

export interface Settings {
  readonly units: 'us' | 'si';
  /** `system` follows the device. */
  readonly theme: 'system' | 'light' | 'dark';
}

function parse(data: unknown): Settings {
  const { units, theme } = (data ?? {}) as Record<string, unknown>;
  if (units !== 'us' && units !== 'si') throw new Error(`units is ${String(units)}, not us or si`);
  if (theme !== 'system' && theme !== 'light' && theme !== 'dark') {
    throw new Error(`theme is ${String(theme)}, not system, light or dark`);
  }
  return { units, theme };
}

/**
 * boot.js reads the same envelope in <head> before anything is painted, so that a reader of kPa on a
 * dark page never sees a flash of psi on a light one. It is inlined byte for byte, with its hash in
 * the policy (astro.config.mjs); tests/storage/boot.test.ts holds it to what is written here.
 */
export function settingsKeeper(area?: Area): Keeper<Settings> {
  return keeper({
    name: 'settings',
    version: 1,
    empty: { units: 'us', theme: 'system' },
    parse,
    area,
  });
}
