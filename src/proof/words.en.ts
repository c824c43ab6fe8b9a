/** The page about how we know, and the table in the repository. */
export const words = {
  title: 'How we know',
  description:
    'What this site claims of itself, measured: the figure, what it was meant to reach, why it falls short where it does, and the command that measures it again.',
  lead: 'A gauge that nobody has checked is a guess with a needle. So this site was put on the bench as well. Here is what was measured, what came out, and where it falls short.',
  howTo:
    'Each table says on which day and on what machine it was measured. Under it stands the command that measures it again, for anybody who has the source. A line in bold misses its bar, and the reason stands below the table.',
  short: (p: { met: string; all: string }) =>
    `Of ${p.all} figures ${p.met} reach their bar. Nothing was left out because it came out badly.`,
  allMet: (all: string) =>
    `All ${all} figures reach their bar. Nothing was left out because it came out badly.`,
  parts: 'What was asked, and how many figures of it reach their bar:',
  met: (p: { met: string; all: string }) => `${p.met} of ${p.all}`,
  made: 'Made by `npm run quality`. The page /proof/ of the site prints the same figures.',
  measured: (p: { on: string; machine: string }) => `Taken down on ${p.on}. Machine: ${p.machine}.`,
  again: 'Measure it again:',
  why: 'Why it falls short',
  missed: 'Falls short',
  noReason: 'No reason is written down yet.',
  head: {
    what: 'What was measured',
    value: 'Came out',
    bar: 'Meant to reach',
    met: 'Reached',
    command: 'Command',
    yes: 'yes',
    no: 'no',
  },
  accuracy:
    '[How often the planner is right](accuracy) has a page of its own, with everything that it cannot know.',
  /** In the order of the page. */
  proofs: {
    agreement: {
      title: 'Does the model calculate right?',
      lead: 'The numbers of the course come out of one model. It was held against examples that are printed in books and standards, and against programs that were written a second time in another language, from the equations alone.',
    },
    planner: {
      title: 'Is the planner right?',
      lead: 'The planner was tried on thousands of cars that differ from its model. Those cars came out of the same model, so take these figures as the best case.',
    },
    fuzz: {
      title: 'Does bad input break anything?',
      lead: 'A link gets cut off in a message, a file gets damaged, somebody edits one by hand. We made such input by the thousand, always the same from a kept seed. All of it has to be read within its limits or refused in a sentence.',
    },
    security: {
      title: 'Is it safe to open?',
      lead: 'The site may not load anything from elsewhere, and nothing that you type or open may turn into a program. Each page was opened in a browser with its simulations run.',
    },
    packages: {
      title: 'Whose work is inside?',
      lead: 'Parts of the site are the work of others. Here is under which licenses they come, and whether each package is the very one that was checked in.',
    },
    faults: {
      title: 'What if something goes wrong?',
      lead: 'The phone is full, the battery dies in the middle of an answer, the network goes, or the browser runs no scripts. Nothing you wrote may be lost, and each page has to say what it cannot do.',
    },
    walks: {
      title: 'Does every page hold when it is walked?',
      lead: 'A browser goes through every page and every simulation: by keyboard alone, at phone, laptop and projector size, in light and dark, with the server gone, from a folder of a host, and on paper. A learner’s month is lived through with a clock of its own. A small site with every tag that a lesson may hold is built besides.',
    },
    speed: {
      title: 'Is it quick on a slow phone?',
      lead: 'Pages were loaded as a four-times slowed phone on a slow network would load them. Lighthouse is an open-source judge of web pages. It gives up to 100 points for speed, access, good practice, and being found.',
    },
    bytes: {
      title: 'Is it small?',
      lead: 'Every kilobyte costs a second somewhere. This is what the pages weigh as they are sent, compressed.',
    },
    mutation: {
      title: 'Would the tests notice?',
      lead: 'A test that never fails proves nothing. So a program changed the code wrongly in one place, ran the tests, put it back, and went on to the next place: a plus for a minus, a limit left out, a function that does nothing. Each time, some test had to fail.',
    },
    access: {
      title: 'Can everybody use it?',
      lead: 'Gloves, a cracked screen, a keyboard, a screen reader, large type: each page and each stage of a simulation was tried with them.',
    },
  },
};
