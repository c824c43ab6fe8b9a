/** Where a lesson's questions lie, under the folder the site stands in: "/", or "/es/" for a build in another language. */
export function questionsAddress(base: string, lesson: string): string {
  return `${base.replace(/\/$/, '')}/questions/${lesson}.json`;
}
