import { NAMES, type ByName, type Name } from '../../diagnosis/index.ts';
import { words } from './sheet-words.en.ts';

/** Less than this is not worth a sentence. */
const MOVED = 0.03;

interface Printed {
  readonly fault: (name: Name) => string;
  readonly share: (part: number) => string;
}

/** What a reading did to the list: the name that rose most, and the one that fell most. */
export function stepWords(from: ByName, to: ByName, { fault, share }: Printed): string {
  const moved = NAMES.map((name) => ({ name, by: to[name] - from[name] })).sort(
    (a, b) => b.by - a.by,
  );
  const [up] = moved;
  const down = moved.at(-1);
  if (up === undefined || down === undefined) return '';
  const of = (name: Name) => ({
    fault: fault(name),
    from: share(from[name]),
    to: share(to[name]),
  });
  const [rises, falls] = [of(up.name), of(down.name)];
  const { step } = words;
  if (up.by < MOVED && down.by > -MOVED) return step.little;
  if (up.by < MOVED) return step.down(falls);
  if (down.by > -MOVED) return step.up(rises);
  return step.upAndDown({
    up: rises.fault,
    upFrom: rises.from,
    upTo: rises.to,
    down: falls.fault,
    downFrom: falls.from,
    downTo: falls.to,
  });
}
