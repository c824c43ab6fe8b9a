/**
 * Two halves of one check, run in the page of job sheets with a new load between them: a job is deleted in the moment in which the
 * page goes, and stays deleted.
 */
/* eslint-disable no-unused-vars -- run.ts calls them in the page */
const leaving = (() => {
  const seen = { title: document.title, simulations: [], trouble: [] };
  const button = (name) =>
    [...document.querySelectorAll('button')].find(
      (one) => one.textContent.trim() === name || one.getAttribute('aria-label') === name,
    );
  const typeInto = (field, text) => {
    field.value = text;
    field.dispatchEvent(new Event('input', { bubbles: true }));
  };
  const alive = () =>
    until('the job sheets', () => document.querySelector('#jobs')?.dataset.ready === 'true');
  return {
    begin: async () => {
      await alive();
      for (const label of ['Blue wagon', 'Van']) {
        typeInto(document.querySelector('#jobs input[type="text"]'), label);
        document.querySelector('#jobs form').requestSubmit();
        await until('the job', () => document.querySelector('.job')?.dataset.ready === 'true');
        button('All jobs').click();
        await until('the list', () => document.querySelector('.kept-listed'));
      }
      await new Promise((done) => setTimeout(done, 600));
      button('Delete Van').click();
      return seen;
    },
    end: async () => {
      await alive();
      const listed = await until(
        'the list',
        () => document.querySelector('.kept-listed')?.textContent,
      );
      if (!listed.includes('Blue wagon')) seen.trouble.push('a job that was kept is gone');
      if (listed.includes('Van'))
        seen.trouble.push('a job that was deleted as the page went is back');
      return seen;
    },
  };
})();
