import type { ComponentChildren } from 'preact';

interface MoreProps {
  /** What is behind it: "More controls". */
  readonly label: string;
  readonly children: ComponentChildren;
  /** Whether it stands open at first. */
  readonly open?: boolean;
}

/** A fold for what is not needed first. Native, so that it opens without a script. */
export function More({ label, children, open = false }: MoreProps) {
  return (
    <details class="more" open={open}>
      <summary>{label}</summary>
      <div class="more-body">{children}</div>
    </details>
  );
}
