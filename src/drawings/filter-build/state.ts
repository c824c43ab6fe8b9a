import { words } from './words.en.ts';

/** Pleats of the two, of one depth: half as many is half the media. */
export const PLEATS = { maker: 12, unknown: 6 } as const;

export const describeFilterBuild = (): string =>
  words.describe({ maker: String(PLEATS.maker), unknown: String(PLEATS.unknown) });
