// The switches in the header, on every page, with no framework. They change two attributes of
// <html>; style sheets and src/ui/units-signal.ts follow those.
import { settingsKeeper, type Settings } from '../storage/settings.ts';

const root = document.documentElement;
const settings = settingsKeeper();
const radios = document.querySelectorAll<HTMLInputElement>('#settings input[name="units"]');
const themeButton = document.querySelector<HTMLButtonElement>('#theme');
const systemIsDark = matchMedia('(prefers-color-scheme: dark)');

function show({ units, theme }: Settings): void {
  root.dataset.units = units;
  if (theme === 'system') delete root.dataset.theme;
  else root.dataset.theme = theme;
  for (const radio of radios) radio.checked = radio.value === units;
}

// Shown first and kept after: where the browser keeps nothing, the switch still works on this page.
function change(part: Partial<Settings>): void {
  show({ ...shown(), ...part });
  settings.update(() => shown());
}

function shown(): Settings {
  const { theme } = root.dataset;
  return {
    units: root.dataset.units === 'si' ? 'si' : 'us',
    theme: theme === 'dark' || theme === 'light' ? theme : 'system',
  };
}

// The site itself is kept on the device as well; the script for that comes after everything a reader waits for.
addEventListener('load', () => void import('../offline/start.ts'));

const { data, status } = settings.read();
// The boot script found a damaged slot or no pointer; written anew, the next page starts right.
if (status === 'ok' || status === 'recovered') show(data);
else show(shown());
if (status === 'recovered') settings.update(() => data);
for (const radio of radios) {
  radio.addEventListener('change', () => change({ units: radio.value === 'si' ? 'si' : 'us' }));
}
themeButton?.addEventListener('click', () => {
  const system = systemIsDark.matches ? 'dark' : 'light';
  const now = shown().theme === 'system' ? system : shown().theme;
  const next = now === 'dark' ? 'light' : 'dark';
  // Back at what the device says means following the device again.
  change({ theme: next === system ? 'system' : next });
});
settings.watch(() => {
  const kept = settings.read();
  if (kept.status === 'ok') show(kept.data);
});
