/** What the walk found on a page. */
export interface Seen {
  readonly title: string;
  readonly simulations: readonly string[];
  readonly trouble: readonly string[];
}

export interface OpenBrowser {
  readonly name: string;
  /** Opens a page and runs the body of an async function in it. */
  walk(url: string, body: string): Promise<Seen>;
  /** The page on paper, as text; undefined where the browser cannot print from outside. */
  print?(url: string): Promise<string>;
  close(): Promise<void>;
}
