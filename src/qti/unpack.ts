/** A zip file somebody brought, as trees of XML. It may be huge, cut off, or no zip file at all. */
import { strFromU8, unzipSync } from 'fflate';
import type { Root } from 'xast';
import { fromXml } from 'xast-util-from-xml';
import { MANIFEST } from './names.ts';
import { Refusal } from './refusal.ts';
import { words } from './words.en.ts';

const { refused } = words;
const MB = 1_000_000;
/** Ours are a twentieth of this. */
const MOST_PACKED = 20;
const MOST_UNPACKED = 100;

export type Tree = ReadonlyMap<string, Root>;

export function unpack(bytes: Uint8Array): Tree {
  if (bytes.length > MOST_PACKED * MB)
    throw new Refusal(refused.huge({ most: `${MOST_PACKED} MB` }));
  const files = unzipped(bytes);
  if (!(MANIFEST in files)) throw new Refusal(refused.noManifest);
  return new Map(
    Object.entries(files)
      .filter(([path]) => !path.endsWith('/'))
      .map(([path, content]) => [path, treeOf(path, content)]),
  );
}

function unzipped(bytes: Uint8Array): Record<string, Uint8Array> {
  let size = 0;
  try {
    return unzipSync(bytes, {
      // Asked before a file is unpacked: one that says it is larger than all of ours is not.
      filter: ({ originalSize }) => {
        size += originalSize;
        if (size > MOST_UNPACKED * MB)
          throw new Refusal(refused.huge({ most: `${MOST_UNPACKED} MB` }));
        return true;
      },
    });
  } catch (error) {
    throw error instanceof Refusal ? error : new Refusal(refused.notZip);
  }
}

function treeOf(path: string, content: Uint8Array): Root {
  try {
    return fromXml(strFromU8(content));
  } catch (error) {
    // What is wrong, and where, stands in the first line of the cause.
    const cause = error instanceof Error && error.cause instanceof Error ? error.cause : error;
    const [why = ''] = (cause as Error).message.split('\n');
    throw new Refusal(refused.notXml({ file: path, why }));
  }
}
