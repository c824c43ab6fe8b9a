/**
 * Whether a lesson was opened from where one looks something up (the search, the glossary, a question) and not from the course:
 * whole addresses of the lesson and of the page that led to it.
 * @example
 * isLookedUp('https://a.org/lessons/live-data/', 'https://a.org/search/?q=log') // true
 */
export function isLookedUp(here: string, from: string): boolean {
  const base = here.replace(/lessons\/[^/]+\/[^/]*$/, '');
  return from.startsWith(base) && !/^(?:[?#]|course\/|lessons\/|$)/.test(from.slice(base.length));
}
