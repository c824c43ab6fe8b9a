// The import rules of .dependency-cruiser.mjs for .astro files, which dependency-cruiser cannot read.
import { globSync, readFileSync } from 'node:fs';
import { posix } from 'node:path';
import { folders } from '../../.dependency-cruiser.mjs';

export interface FolderRule {
  readonly comment: string;
  readonly from: string;
  readonly mayReach: readonly string[];
}

const importPattern = /^\s*(?:import|export)\b[^'"]*?['"](\.[^'"]+)['"]/gm;
const within = (path: string, folder: string): boolean =>
  path === folder || path.startsWith(`${folder}/`);

const widgetOf = (path: string): string | undefined => /^src\/widgets\/([^/]+)/.exec(path)?.[1];
/** The rule no-widget-imports-a-widget. */
const crossesWidgets = (file: string, target: string): boolean => {
  const [own, other] = [widgetOf(file), widgetOf(target)];
  return own !== undefined && other !== undefined && own !== other;
};

/** One sentence for each relative import in the file that its folder may not make. */
export function wrongImports(file: string, text: string, rules: readonly FolderRule[]): string[] {
  const rule = rules.find(({ from }) => within(file, from));
  if (rule === undefined) return [];
  const allowed = [rule.from, ...rule.mayReach];
  return Array.from(text.matchAll(importPattern), ([, path = '']) =>
    posix.join(posix.dirname(file), path.replace(/\?.*$/, '')),
  )
    .filter(
      (target) => !allowed.some((folder) => within(target, folder)) || crossesWidgets(file, target),
    )
    .map((target) => `${file} imports ${target}. ${rule.from} may not: ${rule.comment}`);
}

if (import.meta.main) {
  const files = globSync('src/**/*.astro').map((file) => file.replaceAll('\\', '/'));
  const wrong = files.flatMap((file) => wrongImports(file, readFileSync(file, 'utf8'), folders));
  for (const sentence of wrong) console.error(sentence);
  console.log(`${files.length} .astro files, ${wrong.length} imports against the rules`);
  if (wrong.length > 0) process.exit(1);
}
