/**
 * The folder that holds the words: lessons, pages, questions, glossary, sources. Another one than content/ is for the tests
 * of the lesson form, which build a site of their own.
 */
export function contentRoot(): string {
  return process.env['CONTENT_DIR'] ?? 'content';
}
