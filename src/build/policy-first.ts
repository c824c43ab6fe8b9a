import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { AstroIntegration } from 'astro';
import { filesIn } from './files-in.ts';

const policyPattern = /<meta http-equiv="content-security-policy"[^>]*>/;
const charset = '<meta charset="utf-8">';

/**
 * The page with its policy above everything that it should govern, right under the character set, which
 * has to come first. Astro writes it at the end of the head, under the boot script. The boot script could
 * stand at the top of the body instead; but then the choice of units comes after the body has begun.
 */
export function withPolicyFirst(html: string): string {
  const [policy] = policyPattern.exec(html) ?? [];
  if (policy === undefined || !html.includes(charset)) return html;
  return html.replace(policy, '').replace(charset, () => charset + policy);
}

export const policyFirst = (): AstroIntegration => ({
  name: 'policy-first',
  hooks: {
    'astro:build:done': ({ dir }) => {
      const site = fileURLToPath(dir);
      for (const file of filesIn(site)) {
        if (!file.endsWith('.html')) continue;
        const page = join(site, file);
        writeFileSync(page, withPolicyFirst(readFileSync(page, 'utf8')));
      }
    },
  },
});
