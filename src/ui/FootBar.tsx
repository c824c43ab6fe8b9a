import type { ComponentChildren } from 'preact';

interface FootBarProps {
  /** What a screen reader calls it. */
  readonly label: string;
  /** Of its own place. */
  readonly class: string;
  readonly children: ComponentChildren;
}

/** What one is at and the way on: at the foot of the screen, in reach of a thumb, while what it ends is in sight. */
export const FootBar = ({ label, class: own, children }: FootBarProps) => (
  <div class={`foot-bar no-print ${own}`} role="region" aria-label={label}>
    {children}
  </div>
);
