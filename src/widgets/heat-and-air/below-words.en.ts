/** Fetched with the table that shows every place under air. */
export const words = {
  head: 'Every place under air:',
  how: (p: { supply: string }) => `${p.supply} before the tester’s hole, valve body off, cold.`,
  place: 'Air held at',
  here: 'here',
  healthy: 'healthy',
  places: {
    forward: 'Forward circuit',
    reverse: 'Reverse circuit',
    high: 'High circuit',
    transferSeal: 'Transfer seal',
  },
  ok: 'ok',
  leaks: 'leaks',
};
