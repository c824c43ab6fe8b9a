import { expect, test } from 'vitest';
import { coursePath, nodeSize } from '../../src/layouts/course-path.ts';
import { course, theory } from '../../src/lessons/course.ts';

const place = new Map(course.map(({ id }, index) => [id, index + 1]));
const all = course.map(({ id, title, needs }, index) => ({
  id,
  title,
  order: index + 1,
  needs: needs.map((need) => place.get(need) ?? 0),
  written: true,
}));

// The two parts as the course page draws them.
for (const part of [all.slice(0, theory.length), all.slice(theory.length)]) {
  test(`lessons from ${part[0]?.order}: each right of what it needs, none on another, all inside`, () => {
    const { width, height, nodes, lines } = coursePath(part);
    const x = new Map(nodes.map((node) => [node.order, node.x]));
    for (const node of nodes) {
      for (const need of node.needs) {
        const before = x.get(need);
        if (before !== undefined) expect(node.x).toBeGreaterThan(before + nodeSize);
      }
      expect(node.x).toBeGreaterThanOrEqual(1);
      expect(node.x + nodeSize).toBeLessThanOrEqual(width - 1);
      expect(node.y).toBeGreaterThanOrEqual(1);
      expect(node.y + nodeSize).toBeLessThanOrEqual(height - 1);
    }
    expect(nodes).toHaveLength(part.length);
    expect(new Set(nodes.map(({ x, y }) => `${x} ${y}`)).size).toBe(part.length);
    // One line for each thing that has to come before.
    expect(lines).toHaveLength(part.flatMap(({ needs }) => needs).length);
  });
}
