const entities: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
};

/** Text for markup. */
export const escaped = (text: string): string =>
  text.replace(/[&<>"]/gu, (sign) => entities[sign] ?? sign);

/** Text for a string of a style sheet. */
export const quoted = (text: string): string => `"${text.replace(/["\\]/gu, '\\$&')}"`;
