export interface LabelBox {
  /** Where it would stand if it were alone: its middle. */
  readonly at: number;
  readonly height: number;
}

/**
 * Labels that want the same place, moved apart by as little as possible.
 *
 * Pool adjacent violators: each label starts alone; where two overlap they join into a block
 * whose middle is the mean of what its members want; blocks join until none overlap. That is
 * the least-squares answer. Pushing each one down past its neighbour, the usual shortcut,
 * drifts the whole stack off its lines. Returns middles, in the order given.
 */
export function placeLabels(
  boxes: readonly LabelBox[],
  min: number,
  max: number,
): readonly number[] {
  interface Block {
    readonly members: number[];
    height: number;
    top: number;
  }
  const order = boxes.map((_, i) => i).sort((a, b) => box(a).at - box(b).at || a - b);
  function box(i: number): LabelBox {
    return boxes[i] ?? { at: 0, height: 0 };
  }
  const settle = (block: Block): void => {
    let offset = 0;
    let sum = 0;
    for (const i of block.members) {
      sum += box(i).at - (offset + box(i).height / 2);
      offset += box(i).height;
    }
    block.height = offset;
    const free = sum / block.members.length;
    block.top = Math.max(min, Math.min(free, max - offset));
  };
  const blocks: Block[] = [];
  for (const i of order) {
    let block: Block = { members: [i], height: 0, top: 0 };
    settle(block);
    for (
      let above = blocks.at(-1);
      above && above.top + above.height > block.top;
      above = blocks.at(-1)
    ) {
      blocks.pop();
      block = { members: [...above.members, ...block.members], height: 0, top: 0 };
      settle(block);
    }
    blocks.push(block);
  }
  const middles = boxes.map(() => 0);
  for (const block of blocks) {
    let top = block.top;
    for (const i of block.members) {
      middles[i] = top + box(i).height / 2;
      top += box(i).height;
    }
  }
  return middles;
}
