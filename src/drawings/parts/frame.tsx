import type { ComponentChildren, JSX } from 'preact';
import { HatchDefs } from './hatch.tsx';

export interface FrameProps {
  /** Unique on the page: every id inside the drawing starts with it. */
  id: string;
  width: number;
  height: number;
  title: string;
  desc: string;
  children: ComponentChildren;
}

export function Frame({ id, width, height, title, desc, children }: FrameProps): JSX.Element {
  return (
    <svg
      class="dw"
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
