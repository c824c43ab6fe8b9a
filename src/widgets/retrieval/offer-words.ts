/** The words of the offer. They travel in the page and not in the script, which every lesson pays for. */
export function offerWords(count: number, total: number) {
  return {
    head: 'What stayed with you?',
    intro: `${count} of the ${total} questions of this lesson. The lesson goes out of sight until you are done; that is what makes it stay with you. Say how sure you are before you check. Your answers stay on this device; nothing is sent.`,
    start: 'Cover the lesson and start',
    loading: 'Loading the questions',
    again: 'Try again',
    reload: 'Reload the page',
    /** No questions came. They can be asked for again, in any browser. */
    offline: 'The questions could not be loaded. Check that you are connected, then try again.',
    /** The questions came and the script did not: some browsers ask for that once in the life of a page. */
    stuck: 'The questions could not be loaded. Reload the page, then press start again.',
  };
}
export type OfferWords = ReturnType<typeof offerWords>;
