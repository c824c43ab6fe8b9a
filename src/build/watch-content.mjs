import { spawn } from 'node:child_process';
import { resolve } from 'node:path';
import { clearTimeout, setTimeout } from 'node:timers';

/** Time for an editor to write all that it writes at one save [ms]. */
const SAVE = 150;
/** The place at the start of each line that the check prints. */
const place = /^(.+?):(\d+):(\d+) (.*)$/;

/**
 * In `npm run dev`, checks the content at the start and after each save, and shows what is wrong in the terminal and over the
 * page, with file and line. A process of its own each time: it reads the numbers and tags as they stand now, and a slow check
 * holds up no page.
 *
 * @param {string} root the folder that holds the content
 * @returns {import('astro').AstroIntegration}
 */
export function watchContent(root) {
  // A build starts a server as well, to read the content, and closes it at once.
  let dev = false;
  /** @type {string[]} */
  let lines = [];
  return {
    name: 'watch-content',
    hooks: {
      // Before Astro reads the content, which ends in words without a line if front matter is wrong.
      'astro:config:setup': async ({ command, logger }) => {
        dev = command === 'dev';
        if (!dev) return;
        lines = await said(root);
        for (const line of lines) logger.error(line);
      },
      'astro:server:setup': ({ server, logger }) => {
        if (!dev) return;
        /** @type {NodeJS.Timeout | undefined} */
        let timer;
        const show = () => {
          const [, file = '', line, column, message] = place.exec(lines[0] ?? '') ?? [];
          if (message === undefined) return;
          const loc = { file: resolve(file), line: Number(line), column: Number(column) };
          const err = { message: lines.join('\n\n'), stack: '', id: loc.file, loc };
          server.ws.send({ type: 'error', err });
        };
        const check = async () => {
          const before = lines.length;
          lines = await said(root);
          for (const line of lines) logger.error(line);
          show();
          if (before > 0 && lines.length === 0) {
            logger.info('The content is in order again.');
            server.ws.send({ type: 'full-reload' });
          }
        };
        server.watcher.on('all', (_, path) => {
          if (!resolve(path).startsWith(resolve(root))) return;
          clearTimeout(timer);
          timer = setTimeout(() => void check(), SAVE);
        });
        show();
      },
    },
  };
}

/**
 * What the check has to say: a line for each fault and one in sum, or nothing.
 *
 * @param {string} root
 * @returns {Promise<string[]>}
 */
function said(root) {
  return new Promise((done) => {
    const child = spawn(process.execPath, ['src/lessons/check/index.ts', root]);
    let words = '';
    child.stderr.on('data', (chunk) => (words += String(chunk)));
    child.on('close', (code) => done(code === 0 ? [] : words.trim().split('\n')));
  });
}
