/** A heading's words as an address: "Hot, thin fluid" becomes "hot-thin-fluid". */
export function slug(words: string): string {
  return words
    .toLowerCase()
    .normalize('NFKD')
    .replace(/[\u0300-\u036f'’]/g, '')
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-|-$/g, '');
}
