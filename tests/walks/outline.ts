import {
  PDFArray,
  PDFDict,
  type PDFDocument,
  PDFHexString,
  PDFName,
  PDFString,
  type PDFRef,
} from 'pdf-lib';

export interface Bookmark {
  readonly title: string;
  readonly page: number;
}

/** The bookmarks of a file in reading order, by ISO 32000-1, 12.3.3: /First, /Next, /Title and /Dest. */
export function bookmarksIn(file: PDFDocument): readonly Bookmark[] {
  const pageOf = new Map<PDFRef, number>(file.getPages().map(({ ref }, i) => [ref, i + 1]));
  const named = file.catalog.lookupMaybe(PDFName.of('Dests'), PDFDict);
  const all: Bookmark[] = [];
  const walk = (first: PDFDict | undefined): void => {
    for (
      let item = first;
      item !== undefined;
      item = item.lookupMaybe(PDFName.of('Next'), PDFDict)
    ) {
      const title = item.lookup(PDFName.of('Title'), PDFString, PDFHexString).decodeText();
      const to = item.lookup(PDFName.of('Dest'));
      const place = to instanceof PDFName ? named?.lookup(to) : to;
      const page = place instanceof PDFArray ? pageOf.get(place.get(0) as PDFRef) : undefined;
      all.push({ title: title.replace(/\s+/gu, ' ').trim(), page: page ?? 0 });
      walk(item.lookupMaybe(PDFName.of('First'), PDFDict));
    }
  };
  walk(
    file.catalog
      .lookupMaybe(PDFName.of('Outlines'), PDFDict)
      ?.lookupMaybe(PDFName.of('First'), PDFDict),
  );
  return all;
}
