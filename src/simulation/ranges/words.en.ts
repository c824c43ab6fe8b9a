import { words as names } from '../../car/names/words.en.ts';

const { drive, reverse } = names.ranges;

export const words = {
  selection: 'Range selection',
  selections: {
    electronic: { words: 'Electronic' },
    mechanical: { words: 'Mechanical', note: 'lever and cable' },
  },
  range: 'Range',
  ranges: { drive: { words: drive }, reverse: { words: reverse } },
};
