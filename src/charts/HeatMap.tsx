import { bisectCenter } from 'd3-array';
import { useRef, useState } from 'preact/hooks';
import { LiveText } from '../ui/LiveText.tsx';
import { format } from '../quantity/print.ts';
import { textFor } from '../quantity/unit-system.ts';
import { Kept } from '../ui/still.ts';
import { useUnits } from '../ui/use-units.ts';
import { Axes, type Frame } from './Axes.tsx';
import { placeAxis, widestTick } from './axis.ts';
import { ChartFigure } from './ChartFigure.tsx';
import { cellEdges, deepestCell, runsOf } from './grid.ts';
import { hatchFill, Hatches } from './Hatches.tsx';
import { exactAreas, mapTable, placeNow, type HeatMapProps } from './map-layout.ts';
import { linePath, round } from './path.ts';
import { TextLines } from './TextLines.tsx';
import { useSize } from './use-size.ts';
import { words } from './words.en.ts';
import { EM_PER_CHARACTER, textWidth } from './wrap.ts';

interface Cell {
  readonly row: number;
  readonly column: number;
}

/** Two givens against each other, each cell in one of a few states: filled, hatched or plain, with words on them. */
export function HeatMap(map: HeatMapProps) {
  const {
    id,
    name,
    takeaway,
    xAxis,
    yAxis,
    x: xs,
    y: ys,
    cells,
    categories,
    contour,
    now,
    onPick,
  } = map;
  const box = useRef<HTMLDivElement>(null);
  const size = useSize(box);
  const system = useUnits();
  const [cursor, setCursor] = useState<Cell | null>(null);
  const [spoken, setSpoken] = useState('');
  const { width, height, em } = size;
  const frame: Frame = {
    left: widestTick(yAxis, system) * em * EM_PER_CHARACTER + em * 0.9,
    right: width - em * 0.8,
    top: em * 1.9,
    bottom: height - em * 2.9,
  };
  const x = placeAxis(xAxis, system, [frame.left, frame.right]);
  const y = placeAxis(yAxis, system, [frame.bottom, frame.top]);
  const xEdges = cellEdges(xs, xAxis.min, xAxis.max).map(x.place);
  const yEdges = cellEdges(ys, yAxis.min, yAxis.max).map(y.place);
  const edge = (edges: readonly number[], i: number): number => round(edges[i] ?? 0);

  const labelOf = (cell: Cell): string => {
    const category = cells[cell.row]?.[cell.column];
    return categories.find((one) => one.id === category)?.label ?? words.noValue;
  };
  const describe = (cell: Cell): string =>
    `${format(xs[cell.column] ?? 0, xAxis.quantity, system)}, ${format(ys[cell.row] ?? 0, yAxis.quantity, system)}: ${labelOf(cell)}`;
  const go = (cell: Cell) => {
    setCursor(cell);
    setSpoken(`${describe(cell)}.`);
  };
  const pick = (cell: Cell) => onPick?.(xs[cell.column] ?? 0, ys[cell.row] ?? 0);
  const cellAt = (event: PointerEvent & { currentTarget: HTMLElement }): Cell => {
    const area = event.currentTarget.getBoundingClientRect();
    const row = bisectCenter(
      ys.map((v) => -y.place(v)),
      -(event.clientY - area.top),
    );
    return { row, column: bisectCenter(xs.map(x.place), event.clientX - area.left) };
  };
  const onKeyDown = (event: KeyboardEvent) => {
    const start: Cell = cursor ?? {
      row: bisectCenter(ys, now?.y ?? yAxis.min),
      column: bisectCenter(xs, now?.x ?? xAxis.min),
    };
    const moves: Record<string, readonly [number, number]> = {
      ArrowUp: [1, 0],
      ArrowDown: [-1, 0],
      ArrowRight: [0, 1],
      ArrowLeft: [0, -1],
    };
    const move = moves[event.key];
    if (move) {
      event.preventDefault();
      const by = event.shiftKey ? 5 : 1;
      go({
        row: Math.min(ys.length - 1, Math.max(0, start.row + move[0] * by)),
        column: Math.min(xs.length - 1, Math.max(0, start.column + move[1] * by)),
      });
    } else if ((event.key === 'Enter' || event.key === ' ') && onPick && cursor) {
      event.preventDefault();
      pick(cursor);
    } else if (event.key === 'Escape') {
      setCursor(null);
    }
  };

  const cellArea = (category: string): string =>
    runsOf(cells, category)
      .map(
        ({ row, from, to }) =>
          `M${edge(xEdges, from)} ${edge(yEdges, row)}H${edge(xEdges, to)}V${edge(yEdges, row + 1)}H${edge(xEdges, from)}Z`,
      )
      .join('');

  // Cells, edge and names rest while only the marked state moves.
  const drawGround = () => {
    const deepest = new Map(categories.map((one) => [one.id, deepestCell(cells, one.id)]));
    const areas = exactAreas(map, deepest, x.place, y.place, frame);
    return (
      <>
        <Hatches id={id} />
        {categories.map(({ id: category, fill }) => (
          <path
            key={category}
            class={`cell ${fill}`}
            fill={fill === 'hatched' ? hatchFill(id, 'sparse') : undefined}
            d={areas?.get(category) ?? cellArea(category)}
          />
        ))}
        <Axes x={x} y={y} frame={frame} em={em} grid={false} />
        {contour && (
          <path
            class="contour"
            d={linePath(
              contour.map(([cx]) => cx),
              contour.map(([, cy]) => cy),
              x.place,
              y.place,
            )}
          />
        )}
        {categories.map(({ id: category, label, fill }) => {
          const cell = deepest.get(category);
          if (!cell) return null;
          const half = textWidth(label, em * 1.2) / 2;
          const middle = x.place(xs[cell.column] ?? 0);
          return (
            <TextLines
              key={category}
              lines={[label]}
              x={Math.min(frame.right - half, Math.max(frame.left + half, middle))}
              y={Math.min(
                frame.bottom - em * 0.8,
                Math.max(frame.top + em * 0.8, y.place(ys[cell.row] ?? 0)),
              )}
              em={em}
              anchor="middle"
              kind={`cell-name ${fill}`}
            />
          );
        })}
      </>
    );
  };
  const ground = (
    <Kept
      by={[id, xs, ys, xAxis, yAxis, cells, categories, contour, system, width, height, em]}
      draw={drawGround}
    />
  );
  const nowText = now
    ? placeNow(map, textFor(now.words, system), x.place, y.place, frame, em)
    : null;
  return (
    <ChartFigure
      id={id}
      name={name}
      takeaway={textFor(takeaway, system)}
      box={box}
      size={size}
      tables={() => [mapTable(map, system)]}
      height={map.height}
      corner
      pad={
        <>
          <div
            class="chart-pad"
            role="application"
            tabIndex={0}
            aria-label={onPick ? words.setFromMap(name) : words.readMap(name)}
            onKeyDown={onKeyDown}
            onPointerMove={(event) => {
              if (event.pointerType === 'mouse') setCursor(cellAt(event));
            }}
            onPointerLeave={() => setCursor(null)}
            onClick={(event) => {
              const cell = cellAt(
                event as unknown as PointerEvent & { currentTarget: HTMLElement },
              );
              go(cell);
              pick(cell);
            }}
            onBlur={() => setCursor(null)}
          />
          <LiveText text={spoken} />
        </>
      }
    >
      {ground}
      {now && nowText && (
        <g class="now">
          <circle
            class="mark now"
            cx={round(x.place(now.x))}
            cy={round(y.place(now.y))}
            r={round(em * 0.5)}
          />
          <TextLines {...nowText} em={em} kind="mark-name" />
        </g>
      )}
      {cursor && (
        <g class="cursor">
          <rect
            class="cursor-cell"
            x={edge(xEdges, cursor.column)}
            y={edge(yEdges, cursor.row + 1)}
            width={round((xEdges[cursor.column + 1] ?? 0) - (xEdges[cursor.column] ?? 0))}
            height={round((yEdges[cursor.row] ?? 0) - (yEdges[cursor.row + 1] ?? 0))}
          />
          <TextLines
            lines={[describe(cursor)]}
            x={frame.right}
            y={em * 0.65}
            em={em}
            anchor="end"
            kind="cursor-here"
          />
        </g>
      )}
    </ChartFigure>
  );
}
