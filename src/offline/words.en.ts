/** Over any page, when a newer version of the site is on the device. */
export const words = {
  newer: 'A new version of this site is ready. Reload when it suits you.',
  reload: 'Reload now',
  later: 'Later',
  closeOthers:
    'This site is open in another tab or window. Close that one first, so that nothing open there is cut off, then press Reload now.',
  closeAll:
    'The new version did not answer. Close every tab of this site, and the next one you open has it.',
};
