import type { Locator } from '@playwright/test';

/** Columns and rows of a thumbnail: fine enough that a part that is missing or astray shows, too coarse for a font's edges. */
const COLUMNS = 24;
const ROWS = 16;

/**
 * What an element looks like from far off: the greys of 24 x 16 fields from left to right and top to bottom, each 00
 * (black) to ff (white), a row in a string.
 */
export async function thumbnail(element: Locator): Promise<readonly string[]> {
  const png = (await element.screenshot({ animations: 'disabled' })).toString('base64');
  return element.page().evaluate(
    async ({ png, columns, rows }) => {
      const bytes = Uint8Array.from(atob(png), (sign) => sign.charCodeAt(0));
      const picture = await createImageBitmap(new Blob([bytes], { type: 'image/png' }));
      const { width, height } = picture;
      const canvas = new OffscreenCanvas(width, height);
      const context = canvas.getContext('2d');
      if (context === null) throw new Error('There is no canvas to look at the picture with.');
      context.drawImage(picture, 0, 0);
      const { data } = context.getImageData(0, 0, width, height);
      const sums = new Float64Array(columns * rows);
      const counts = new Float64Array(columns * rows);
      for (let y = 0; y < height; y += 1) {
        for (let x = 0; x < width; x += 1) {
          const field =
            Math.floor((y * rows) / height) * columns + Math.floor((x * columns) / width);
          const i = 4 * (y * width + x);
          const grey = ((data[i] ?? 0) + (data[i + 1] ?? 0) + (data[i + 2] ?? 0)) / 3;
          sums[field] = (sums[field] ?? 0) + grey;
          counts[field] = (counts[field] ?? 0) + 1;
        }
      }
      return Array.from({ length: rows }, (_, row) =>
        Array.from({ length: columns }, (_, column) => {
          const field = row * columns + column;
          const grey = Math.round((sums[field] ?? 0) / Math.max(1, counts[field] ?? 1));
          return grey.toString(16).padStart(2, '0');
        }).join(''),
      );
    },
    { png, columns: COLUMNS, rows: ROWS },
  );
}

const greys = (thumb: readonly string[]): readonly number[] =>
  (thumb.join('').match(/../g) ?? []).map((grey) => Number.parseInt(grey, 16));

/** The largest difference of one field, and the mean of all, in greys of 256. */
export function apart(one: readonly string[], other: readonly string[]): readonly [number, number] {
  const [here, there] = [greys(one), greys(other)];
  if (here.length !== there.length || here.length === 0) return [256, 256];
  const differences = here.map((grey, i) => Math.abs(grey - (there[i] ?? 0)));
  const sum = differences.reduce((total, difference) => total + difference, 0);
  return [Math.max(...differences), sum / differences.length];
}
