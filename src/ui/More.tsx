import type { ComponentChildren } from 'preact';

interface MoreProps {
  /** What is behind it: "More controls". */
  readonly label: string;
  readonly children: ComponentChildren;
}

/** A fold for what is not needed first. Native, so that it opens without a script. */
export function More({ label, children }: MoreProps) {
  return (
    <details class="more">
      <summary>{label}</summary>
      <div class="more-body">{children}</div>
    </details>
  );
}
