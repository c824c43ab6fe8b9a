/** The list of contents: which headings stand in it, and on which pages. */
export interface Heading {
  readonly id: string;
  readonly title: string;
  /** 1 for a chapter, 2 for a section of it. */
  readonly level: 1 | 2;
}

export interface Line extends Heading {
  readonly page: number;
}

/** Page by place, from 1. */
export type Pages = ReadonlyMap<string, number>;

/** A heading that was not printed is a fault of the book, and no line without a number. */
export function contentsOf(headings: readonly Heading[], pages: Pages): readonly Line[] {
  let last = 1;
  return headings.map((heading) => {
    const page = pages.get(heading.id);
    if (page === undefined) throw new Error(`"${heading.title}" (${heading.id}) is on no page.`);
    if (page < last) {
      throw new Error(`"${heading.title}" is on page ${page}, after a heading on page ${last}.`);
    }
    last = page;
    return { ...heading, page };
  });
}

/** Whether a second printing left everything where the first one had it. */
export const settled = (before: Pages, after: Pages): boolean =>
  before.size === after.size && [...after].every(([id, page]) => before.get(id) === page);
