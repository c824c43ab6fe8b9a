export const words = {
  selection: 'Range selection',
  selections: {
    electronic: { words: 'Electronic' },
    mechanical: { words: 'Mechanical', note: 'lever and cable' },
  },
  range: 'Range',
  ranges: { drive: { words: 'Drive' }, reverse: { words: 'Reverse' } },
};
