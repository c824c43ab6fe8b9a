// Read by the bootstrap, before a build that would be for nothing, and by the server. Plain .mjs
// without packages, since the bootstrap runs on Node 20.

/**
 * The port that PORT asks for, undefined where it asks for none, or a sentence about a wrong one.
 * @param {string | undefined} text
 * @returns {{ port?: number, wrong?: string }}
 */
export function readPort(text) {
  if (text === undefined || text === '') return {};
  const port = Number(text);
  if (!/^\d+$/.test(text) || port > 65_535) {
    return { wrong: `PORT is "${text.slice(0, 40)}". It must be a whole number from 0 to 65535.` };
  }
  return { port };
}
