import { Component, type ComponentChildren } from 'preact';

interface Props {
  readonly class: string;
  readonly draw: () => ComponentChildren;
}

/**
 * One of several forms of a picture, of which the style sheet shows the one that fits. The server draws them all; after
 * that a form out of sight rests, and is drawn anew when it comes into sight or the page goes to paper.
 */
export class DrawnWhereShown extends Component<Props> {
  private shown = true;
  private watch: ResizeObserver | null = null;

  /** A box with `display: none` has no size, and its observer is told when it gets one. */
  private readonly look = (): void => {
    const { base } = this;
    const shown = base instanceof HTMLElement && base.offsetWidth > 0;
    if (shown && !this.shown) this.forceUpdate();
    this.shown = shown;
  };

  /** Paper has another width, and is laid out before an observer is told. */
  private readonly print = (): void => {
    if (!this.shown) this.forceUpdate();
  };

  override componentDidMount(): void {
    this.watch = new ResizeObserver(this.look);
    if (this.base instanceof HTMLElement) this.watch.observe(this.base);
    addEventListener('beforeprint', this.print);
  }

  override componentWillUnmount(): void {
    this.watch?.disconnect();
    removeEventListener('beforeprint', this.print);
  }

  override shouldComponentUpdate(): boolean {
    return this.shown;
  }

  render({ class: name, draw }: Props): ComponentChildren {
    return <div class={name}>{draw()}</div>;
  }
}
