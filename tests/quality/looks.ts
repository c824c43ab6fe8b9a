import type { Page } from '@playwright/test';
import { axeOn, ENHANCED } from '../e2e/axe.ts';

const TAGS = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];

/** What axe finds, a line each. */
export async function foundBy(page: Page, where: string): Promise<string[]> {
  const { violations } = await axeOn(page, ENHANCED).withTags(TAGS).analyze();
  return violations.map(({ id, nodes }) => `${where}: ${id} ${nodes[0]?.html.slice(0, 200) ?? ''}`);
}

export const LOOKS = [
  ['light', { colorScheme: 'light', forcedColors: 'none', media: 'screen' }],
  ['dark', { colorScheme: 'dark', forcedColors: 'none', media: 'screen' }],
  ['forced colors', { colorScheme: 'light', forcedColors: 'active', media: 'screen' }],
  ['paper', { colorScheme: 'light', forcedColors: 'none', media: 'print' }],
] as const;
