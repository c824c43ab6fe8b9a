/** Where a key takes a cursor among `total` stops; null for keys that are none of its business. */
export function moveIndex(key: string, index: number | null, total: number): number | null {
  const last = total - 1;
  const page = Math.max(1, Math.round(total / 10));
  const from = index ?? -1;
  const to = (next: number): number => Math.min(last, Math.max(0, next));
  switch (key) {
    case 'ArrowRight':
    case 'ArrowUp':
      return to(from + 1);
    case 'ArrowLeft':
    case 'ArrowDown':
      return index === null ? last : to(from - 1);
    case 'PageUp':
      return to((index ?? 0) + page);
    case 'PageDown':
      return to((index ?? last) - page);
    case 'Home':
      return 0;
    case 'End':
      return last;
    default:
      return null;
  }
}
