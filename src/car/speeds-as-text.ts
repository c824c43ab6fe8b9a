/**
 * A column of speeds as a short text: how its tenths of an rpm bend from row to row, which is mostly not at all. A tenth
 * is finer than any sensor tells.
 */
const PARTS = 10;

/** @param rpm speeds [rpm] */
export function speedsAsText(rpm: Float64Array): string {
  let [last, step] = [0, 0];
  return Array.from(rpm, (speed) => {
    const now = Math.round(speed * PARTS);
    const bend = now - last - step;
    [last, step] = [now, now - last];
    return bend;
  }).join(' ');
}

/** The speeds of such a text [rpm]. */
export function speedsIn(text: string): readonly number[] {
  let [last, step] = [0, 0];
  return text.split(' ').map((bend) => {
    step += Number(bend);
    last += step;
    return last / PARTS;
  });
}
