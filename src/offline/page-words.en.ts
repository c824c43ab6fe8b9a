/** The text of the page about use without internet: built into the page, never sent to a script. */
export const words = {
  title: 'Use it without internet',
  description:
    'Whether the whole site is on this device, how much room it takes, how to put it on a phone, a shop laptop or a stick, and how to take it away again.',
  lead: 'A bay with steel walls and a weak signal is no place to wait for a page. One visit with internet puts the whole site on your device, and after that it works with none.',
  here: 'On this device',
  looking: 'Looking at what this device has.',
  noScript:
    'This page needs a script to see what is on the device, and a browser without scripts cannot store the site.',
  works: {
    title: 'What works then',
    lines: [
      'Everything you read and run here works: every lesson and simulation, the search, the rounds of questions, the rehearsal, the practice cases, the planner, the job sheets and the log reader, in both languages.',
      'So do the shop meetings, with their votes on the wall and the notes in a second window: a projector needs no network.',
      'One thing is left out, because no device of yours could use it: the packages of questions that other training systems read.',
      'In a private window a browser throws the copy away when you close it.',
    ],
  },
  install: {
    title: 'Put it on a phone or a laptop',
    lines: [
      'Wait until the line above says that it is ready. Then open the menu of your browser and look for “Install” or “Add to home screen”. On some phones that stands under the button for sharing.',
      'From then on the site opens from an icon of its own, in a window of its own, and most browsers keep an installed site longer than one that was only visited.',
      'Before you count on it, switch the internet off once and open a lesson. That takes a minute at your desk, and it is the only proof that holds in the bay.',
    ],
  },
  stick: {
    title: 'Carry it on a stick',
    lines: [
      'A laptop that is never connected can run the site from a USB stick. All of it is one file, stick.zip.',
      'To get that file, ask whoever put this site on your network: “Please run npm run stick and give me dist.stick/stick.zip.” It is one command for them.',
      'You can make it yourself if you have the source of this site as a folder, a computer with internet, and Node 20 or newer on it with npm. Open a terminal in that folder, the one with package.json in it, and type these one after the other:',
    ],
    commands: ['npm ci', 'npm run build', 'npm run stick'],
    after: [
      'The last one says where the file lies and how large it is: stick.zip, in the folder dist.stick.',
      'Unpack stick.zip on the stick or on the laptop, and do not start anything inside the zip. Open the folder slips-when-hot and read “READ ME FIRST”. It says which file to start on Windows, on a Mac and on Linux, and what you may be asked when you do.',
      'Try it once at your desk with the internet off: start it, open a meeting, and go to its second scene.',
    ],
  },
  newer: {
    title: 'When there is a new version',
    lines: [
      'Your device looks for one when you open a page and are connected. It fetches all of it first, and then a line at the top of the page asks you to reload.',
      'It does not ask while a round of questions, a rehearsal, a case or a job sheet is open. Until you reload, you have the whole old version, never half of each.',
    ],
  },
  remove: {
    title: 'Take the copy away',
    what: 'This frees the room on the device. You can read on while you are connected, and you can store the site again with one press.',
    button: 'Remove the stored site',
    keeps:
      'Your answers, marks and job sheets are not part of the copy and stay where they are. [Keep and move](keep) saves them to a file or deletes them.',
  },
};
