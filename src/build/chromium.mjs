// Finds a Chromium for the browser tests. Plain .mjs without packages: the bootstrap runs it on
// Node 20 before anything is installed.
import { accessSync, constants } from 'node:fs';
import { delimiter, join } from 'node:path';

/** The one without windows first: it draws a third faster, and a test has no use for windows. */
const names = [
  'chromium-headless-shell',
  'chromium',
  'chromium-browser',
  'google-chrome-stable',
  'google-chrome',
];

function executable(path) {
  try {
    accessSync(path, constants.X_OK);
    return true;
  } catch {
    return false;
  }
}

/** The program of that name that the PATH finds first. */
export const onPath = (name) =>
  (process.env.PATH ?? '')
    .split(delimiter)
    .filter((folder) => folder !== '')
    .map((folder) => join(folder, name))
    .find(executable);

/**
 * CHROMIUM_PATH first, because whoever sets it means it: a wrong one is an error, not a hint.
 * @returns {string | undefined} undefined where only Playwright's own download can help
 */
export function findChromium() {
  const asked = process.env.CHROMIUM_PATH;
  if (asked !== undefined && asked !== '') {
    if (executable(asked)) return asked;
    throw new Error(`CHROMIUM_PATH is ${asked}, and no program stands there that can be run.`);
  }
  return names.map(onPath).find((path) => path !== undefined);
}
