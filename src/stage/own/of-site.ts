/** What the page is told of the rest of the site when it is built, so that it need not load it. */
export interface OfSite {
  /** As `Intl` wants it. */
  readonly locale: string;
  readonly lessons: readonly { readonly id: string; readonly title: string }[];
  /** The practice cases that are written. */
  readonly cases: readonly { readonly id: string; readonly title: string }[];
  /** What a simulation calls its last stage, and the button there that copies a link. */
  readonly controls: { readonly stage: string; readonly copy: string };
}
