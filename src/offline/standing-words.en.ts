/** What the page about use without internet says of the copy on this device. */
export const words = {
  ready: (p: { of: string; size: string; sent: string }) =>
    `Ready offline: all ${p.of} files of the site are on this device. They take up ${p.size} here, and fetching them takes about ${p.sent} of data.`,
  storing: (p: { have: string; of: string }) =>
    `Not ready yet: ${p.have} of ${p.of} files are on this device. Keep this page open and stay connected.`,
  begun: 'Not ready yet: your browser is beginning to fetch the site.',
  broken: (p: { have: string; of: string }) =>
    `Not ready: ${p.have} of ${p.of} files are on this device, and the rest could not be fetched. Check that you are connected, then try again. What is here already is not fetched twice.`,
  full: (p: { have: string; of: string; size: string }) =>
    `Not ready: ${p.have} of ${p.of} files are on this device, and then your browser had no room left for more. The whole site takes up ${p.size}. Free some space, then try again.`,
  failed: 'Not ready: the site could not be fetched. Check that you are connected, then try again.',
  off: 'Not stored: the copy was taken away, or your browser is set to save data. One press fetches it.',
  insecure:
    'Not possible at this address: it begins with http://, and browsers store a site only from an https:// address or from the laptop it runs on. Ask whoever runs the server for an https:// address, or use the stick.',
  none: 'Not possible in this window: this browser cannot store a site. A private window is the usual reason, an old browser the other. Open this page in an ordinary window of an up-to-date browser.',
  blocked:
    'Not possible yet: this browser is set to keep nothing from this site. Allow the site to store data in the settings of your browser, where it is often listed with cookies, then reload this page.',
  store: 'Store the site',
  again: 'Try again',
  mayGo: 'Your browser may clear the copy when room gets short.',
  keepIt: 'Ask the browser to keep it',
  kept: 'Your browser has promised to keep the copy when room gets short.',
  notKept:
    'Your browser made no promise. Most make one for a site that is installed, or that you open often.',
};
