/** Reads kept freeze frames by their form as it is told in words, with no code of src. */
const TEMPS = [0, 20, 40, 60, 80, 100];

export interface KeptFrame {
  readonly tempC: number;
  readonly after: number;
  readonly engine: number;
  readonly turbine: number;
  readonly output: number;
  readonly command: number;
  readonly pressure: number;
}

/** Three numbers, then seven for each frame. */
export function storedOf(row: readonly number[]): readonly KeptFrame[] {
  const frames: KeptFrame[] = [];
  for (let at = 3; at < row.length; at += 7) {
    const [temp = 0, time = 0, engine = 0, turbine = 0, output = 0, command = 0, pressure = 0] =
      row.slice(at, at + 7);
    const tempC = TEMPS[temp] ?? Number.NaN;
    frames.push({ tempC, after: time / 100, engine, turbine, output, command, pressure });
  }
  return frames;
}

export const frameOf = (row: readonly number[], tempC: number): KeptFrame | null =>
  storedOf(row).find((frame) => frame.tempC === tempC) ?? null;

/** Whether Reverse stored its code at a temperature. */
export const reverseOf = ([, , bits = 0]: readonly number[], tempC: number): boolean =>
  bits
    .toString(2)
    .padStart(6, '0')
    .at(-1 - TEMPS.indexOf(tempC)) === '1';
