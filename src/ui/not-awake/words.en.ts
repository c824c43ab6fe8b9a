/** Where a page’s script was to come alive, and has not come. */
export const words = {
  asleep:
    'This part of the page is not awake: its script has not arrived. Reload the page once you are connected. What this device keeps for you is untouched.',
};
