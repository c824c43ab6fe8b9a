import { readdirSync, rmSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';

function isAlive(pid: number): boolean {
  try {
    process.kill(pid, 0);
    return true;
  } catch (error) {
    // Somebody else's process is alive too.
    return (error as NodeJS.ErrnoException).code === 'EPERM';
  }
}

/**
 * Where this process builds before anything of the site is touched: a folder beside it, of its own,
 * because two builds may run at once. What broken-off builds left beside the site is removed.
 */
export function folderAside(site: string, pid: number = process.pid): string {
  const beside = dirname(site);
  const stem = `${basename(site)}.next-`;
  for (const name of readdirSync(beside)) {
    const owner = name.startsWith(stem) ? Number(name.slice(stem.length)) : Number.NaN;
    if (Number.isInteger(owner) && !isAlive(owner)) {
      rmSync(join(beside, name), { recursive: true, force: true });
    }
  }
  return join(beside, `${stem}${pid}`);
}
