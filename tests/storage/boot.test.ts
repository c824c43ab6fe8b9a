import { readFileSync } from 'node:fs';
import { runInNewContext } from 'node:vm';
import { expect, test } from 'vitest';
import { settingsKeeper, type Settings } from '../../src/storage/settings.ts';
import { fakeArea } from './fake-area.ts';

const source = readFileSync(new URL('../../src/storage/boot.js', import.meta.url), 'utf8');

/** The attributes of <html> after the boot script ran with this storage. */
function boot(localStorage: unknown): Record<string, string> {
  const dataset: Record<string, string> = { units: 'us' };
  const globals: Record<string, unknown> = { document: { documentElement: { dataset } } };
  Object.defineProperty(globals, 'localStorage', {
    get: typeof localStorage === 'function' ? (localStorage as () => unknown) : () => localStorage,
  });
  runInNewContext(source, globals);
  return dataset;
}

const choices: Settings[] = (['us', 'si'] as const).flatMap((units) =>
  (['system', 'light', 'dark'] as const).map((theme) => ({ units, theme })),
);
test.each(choices)('shows what was chosen: $units, $theme', (chosen) => {
  const area = fakeArea();
  settingsKeeper(area).update(() => ({ units: 'si', theme: 'dark' }));
  settingsKeeper(area).update(() => chosen);
  const { theme = 'system', units } = boot(area);
  expect({ theme, units }).toEqual(chosen);
});

test('a first visit is US units and the theme of the device', () => {
  expect(boot(fakeArea())).toEqual({ js: '', units: 'us' });
});

test.each(['null', '{}', 'rubbish', '{"data":{"units":"<b>","theme":"x"}}'])(
  'is not led astray by %s',
  (text) => {
    const area = fakeArea();
    area.kept.set('hot-clutch:settings:slot', 'a');
    area.kept.set('hot-clutch:settings:a', text);
    expect(boot(area)).toEqual({ js: '', units: 'us' });
  },
);

test('blocked storage stops nothing', () => {
  const refuse = () => {
    throw new DOMException('no', 'SecurityError');
  };
  expect(boot(refuse)).toEqual({ js: '', units: 'us' });
});
