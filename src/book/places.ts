import { PDFArray, PDFDict, PDFName, type PDFDocument, type PDFRef } from 'pdf-lib';
import type { Pages } from './contents.ts';

/** On which page each place stands that something in the file links to. */
export function placesIn(file: PDFDocument): Pages {
  const pageOf = new Map<PDFRef, number>(file.getPages().map(({ ref }, i) => [ref, i + 1]));
  const found = new Map<string, number>();
  const named = file.catalog.lookupMaybe(PDFName.of('Dests'), PDFDict);
  for (const [name, value] of named?.entries() ?? []) {
    const to = file.context.lookup(value);
    const page = to instanceof PDFArray ? pageOf.get(to.get(0) as PDFRef) : undefined;
    if (page !== undefined) found.set(name.decodeText(), page);
  }
  return found;
}
