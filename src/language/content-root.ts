/**
 * The folder that holds the words, in a folder for each language. Another one than content/ is for the tests of the lesson
 * form, which build a site of their own.
 */
export function contentRoot(): string {
  return process.env['CONTENT_DIR'] ?? 'content';
}
