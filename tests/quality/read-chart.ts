import type { Locator } from '@playwright/test';

/** What was read back from a picture and held against the table under it. */
export interface ReadBack {
  readonly name: string;
  readonly values: number;
  readonly wrong: readonly string[];
}

/** How far the drawn line may lie from where the table has it: half of the table's last digit and this much [px], since paths are printed to a tenth. */
const SLACK = 0.35;

/**
 * Every chart in a part of the page, its tables open: each value of the table is looked for in the picture, by the numbers that stand
 * on the picture's own axes. A line chart has a row for each stop, a map the stretch of each state, columns their heights.
 */
export const readBack = (part: Locator): Promise<readonly ReadBack[]> =>
  part.evaluate((whole, slack) => {
    const shown = (one: Element) => one.checkVisibility() && one.getClientRects().length > 0;
    const number = (text: string | null | undefined): number => {
      const plain = (text ?? '').replace(/[\s\u00a0\u202f,]/gu, '').replace('−', '-');
      return /^-?\d*\.?\d+$/u.test(plain) ? Number(plain) : NaN;
    };
    /** Half a unit of the last digit that is printed. */
    const half = (text: string | null | undefined): number => {
      const [, decimals = ''] = (text ?? '').split('.');
      return 0.5 * 10 ** -decimals.replace(/\D/gu, '').length;
    };
    interface Scale {
      readonly place: (value: number) => number;
      readonly perUnit: (value: number) => number;
      readonly isLog: boolean;
    }
    /** From the ticks as printed and where they stand; a log axis by its steps. */
    const scaleOf = (ticks: readonly { value: number; at: number }[]): Scale | null => {
      const known = ticks.filter(({ value }) => Number.isFinite(value));
      const [first, last] = [known[0], known.at(-1)];
      if (!first || !last || first.value === last.value) return null;
      const linear = (v: number) =>
        first.at + ((v - first.value) * (last.at - first.at)) / (last.value - first.value);
      const log = (v: number) =>
        first.at +
        (Math.log(v / first.value) * (last.at - first.at)) / Math.log(last.value / first.value);
      const off = (scale: (v: number) => number) =>
        Math.max(...known.map(({ value, at }) => Math.abs(scale(value) - at)));
      const isLog =
        known.every(({ value }) => value > 0) && known.length > 2 && off(log) < off(linear);
      const place = isLog ? log : linear;
      return {
        isLog,
        place,
        perUnit: (v) =>
          Math.abs(place(v + (isLog ? 0.001 * v : 1)) - place(v)) / (isLog ? 0.001 * v : 1),
      };
    };
    const rowsOf = (table: Element) =>
      [...table.querySelectorAll('tbody tr')].map((row) =>
        [...row.querySelectorAll('th, td')].map((cell) => cell.textContent),
      );
    const points = (d: string) =>
      [...d.matchAll(/[ML](-?[\d.]+) (-?[\d.]+)/gu)].map(([, x, y]) => ({
        x: Number(x),
        y: Number(y),
      }));

    return [...whole.querySelectorAll('figure.chart')].filter(shown).map((figure) => {
      const name = figure.querySelector('.chart-name')?.textContent ?? '';
      const wrong: string[] = [];
      let values = 0;
      const tables = [...figure.querySelectorAll('.data-table table')];
      const caption = (table: Element) => table.querySelector('caption')?.textContent ?? '';
      const table = tables.find((one) => caption(one).startsWith(name));
      if (!table) return { name, values, wrong: ['has no table of its name'] };
      const rows = rowsOf(table);
      const xTicks = [...figure.querySelectorAll('.axes .tick')].map((tick) => ({
        value: number(tick.nextElementSibling?.textContent),
        at: points(tick.getAttribute('d')?.replace(/v.*/u, '') ?? '')[0]?.x ?? 0,
      }));
      const yTicks = [...figure.querySelectorAll('.axes > g')]
        .filter((one) => !one.querySelector('.tick'))
        .map((one) => {
          const text = one.querySelector('text');
          const grid = one.querySelector('.grid')?.getAttribute('d');
          const em = parseFloat(getComputedStyle(figure.querySelector('svg') ?? figure).fontSize);
          const at = grid
            ? (points(grid.replace(/H.*/u, ''))[0]?.y ?? 0)
            : Number(text?.getAttribute('y')) - 0.35 * em;
          return { value: number(text?.textContent), at };
        });
      const [x, y] = [scaleOf(xTicks), scaleOf(yTicks)];

      const lines = [...figure.querySelectorAll('path.line')].map((path) =>
        points(path.getAttribute('d') ?? ''),
      );
      if (lines.length > 0 && x && y) {
        for (const row of rows) {
          const [at, ...of] = row;
          of.forEach((text, series) => {
            const value = number(text);
            const px = x.place(number(at));
            const near = slack + half(at) * x.perUnit(number(at));
            // What is drawn under the lines of the table comes before them.
            const line = lines[lines.length - of.length + series] ?? [];
            const here = line.filter((point) => Math.abs(point.x - px) <= near);
            if (!Number.isFinite(value)) {
              // Between two stops of the table a line may begin or end.
              const stop = here.some((point) => Math.abs(point.x - px) <= slack);
              if (stop && half(at) * x.perUnit(number(at)) < slack)
                wrong.push(`a line at ${at} where the table has none`);
              return;
            }
            values += 1;
            // A log axis has no nought: what is printed as one lies under its lowest mark.
            if (value === 0 && y.isLog) {
              const lowest = Math.max(...yTicks.map(({ at: tick }) => tick));
              if (!here.some((point) => point.y >= lowest - slack)) wrong.push(`${at}: 0 is drawn`);
              return;
            }
            // Past the ends of an axis the tenth of its marks counts the more.
            const room =
              slack + half(text) * y.perUnit(value) + 0.002 * Math.max(0, -y.place(value));
            const py = y.place(value);
            const steep =
              here.length > 1 ? Math.max(...here.map((a) => Math.abs(a.y - (here[0]?.y ?? 0)))) : 0;
            if (!here.some((point) => Math.abs(point.y - py) <= room + steep))
              wrong.push(
                `${at}: ${text} should be drawn at ${py.toFixed(1)}, is at ${here.map(({ y: drawn }) => drawn).join(', ') || 'nowhere'}`,
              );
          });
        }
      } else if (figure.querySelector('.cell') && x && y) {
        // A map: at each stop, the middle of the stretch that the table gives a state lies in that state's area.
        const columns = [...table.querySelectorAll('thead th')]
          .slice(1)
          .map((cell) => cell.textContent);
        const areas = new Map(
          [...figure.querySelectorAll('text.cell-name')].map((text) => [
            text.textContent,
            figure.querySelector<SVGPathElement>(
              `path.cell.${String(text.getAttribute('class')).split(' ')[1] ?? ''}`,
            ),
          ]),
        );
        for (const [at, ...of] of rows) {
          of.forEach((text, i) => {
            const stretch = text.split(/\s+to\s+/u).map(number);
            if (stretch.some((one) => !Number.isFinite(one))) return;
            const middle = ((stretch[0] ?? 0) + (stretch.at(-1) ?? 0)) / 2;
            const area = areas.get(columns[i] ?? '');
            const point = figure.querySelector('svg')?.createSVGPoint();
            if (!point) return;
            values += 1;
            point.x = x.place(number(at));
            // On the edge of the picture half of a cell is cut away, and a limit that was rounded up lies beyond it.
            const half0 = half(text.split(/\s+to\s+/u)[0]);
            const inside = [-half0, 0, half0].some((by) => {
              point.y = y.place(middle + by);
              return [-1.5, 0, 1.5].some((nudge) => {
                const near = new DOMPoint(point.x + nudge, point.y);
                return area?.isPointInFill(near) === true;
              });
            });
            if (!inside) wrong.push(`${at}: ${columns[i]} ${text} is not there`);
          });
        }
      } else {
        // Columns: heights in the proportion of their values, the supply first.
        const bars = [...figure.querySelectorAll('rect.part')];
        const all = rows.map(([, text]) => ({ value: number(text), text }));
        const [whole0] = all;
        const foot = Number(bars[0]?.getAttribute('height'));
        all.forEach(({ value, text }, i) => {
          values += 1;
          const drawn = Number(bars[i]?.getAttribute('height'));
          const per = foot / (whole0?.value || 1);
          if (
            Math.abs(drawn - value * per) >
            slack + half(text) * per + (half(whole0?.text) * foot) / (whole0?.value || 1)
          )
            wrong.push(
              `${rows[i]?.[0]}: ${text} drawn ${drawn} px high, ${(value * per).toFixed(1)} by the first column`,
            );
        });
      }
      return { name, values, wrong };
    });
  }, SLACK);
