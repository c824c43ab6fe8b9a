import type { ComponentChildren, JSX } from 'preact';
import { HatchDefs } from './hatch.tsx';

export interface FrameProps {
  /** Unique on the page: every id inside the drawing starts with it. */
  id: string;
  width: number;
  height: number;
  title: string;
  desc: string;
  /** Parts run out of the picture at its edge. */
  cropped?: boolean | undefined;
  children: ComponentChildren;
}

export function Frame({
  id,
  width,
  height,
  title,
  desc,
  cropped = false,
  children,
}: FrameProps): JSX.Element {
  return (
    <svg
      class={cropped ? 'dw dw-cropped' : 'dw'}
      viewBox={`0 0 ${width} ${height}`}
      role="img"
      aria-labelledby={`${id}-title`}
      aria-describedby={`${id}-desc`}
    >
      <title id={`${id}-title`}>{title}</title>
      <desc id={`${id}-desc`}>{desc}</desc>
      <HatchDefs id={id} />
      {children}
    </svg>
  );
}
