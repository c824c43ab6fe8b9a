import { Component, type ComponentChildren } from 'preact';

type Draw<P> = (props: P) => ComponentChildren;

const same = (a: unknown, b: unknown): boolean =>
  a === b ||
  (Array.isArray(a) &&
    Array.isArray(b) &&
    a.length === b.length &&
    a.every((one, i) => one === (b[i] as unknown)));

/** Whether two sets of props draw the same: strings and numbers by value, lists of them by their members. */
export function sameProps(a: object, b: object): boolean {
  const keys = Object.keys(a);
  return (
    keys.length === Object.keys(b).length &&
    keys.every((key) => same(a[key as never], b[key as never]))
  );
}

/**
 * A component that is drawn again only when its props say something new. For small parts of a
 * picture of which there are dozens while a slider moves two: comparing is a tenth of the work of
 * drawing and diffing. Reads no signals and keeps no state; `memo` would bring preact/compat along.
 */
export function still<P extends object>(draw: Draw<P>) {
  return class extends Component<P> {
    override shouldComponentUpdate(next: Readonly<P>): boolean {
      return !sameProps(this.props, next);
    }
    render(props: P): ComponentChildren {
      return draw(props);
    }
  };
}

interface KeptProps {
  /** What the drawing depends on: by value, or by being the same thing. */
  readonly by: readonly unknown[];
  readonly draw: () => ComponentChildren;
}

/**
 * A part of a component that is drawn again only when something it depends on has changed. JSX kept
 * in `useMemo` would do the same and hold on to every drawing since: 7 MB in a thousand moves of a slider.
 */
export class Kept extends Component<KeptProps> {
  override shouldComponentUpdate({ by }: Readonly<KeptProps>): boolean {
    return !same(this.props.by, by);
  }
  render({ draw }: KeptProps): ComponentChildren {
    return draw();
  }
}
