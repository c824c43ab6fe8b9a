export const words = {
  title: 'One line, and all items take turns',
  second: 'One second of the line',
  turbine: 'T',
  marks: ['T: the turbine’s turn', 'hatched: nobody looks'],
  head: (p: { items: string; turns: string }) =>
    `*${p.items} items: turbine ${p.turns} times a second`,
  line: (p: { slots: string }) =>
    `One second of a line that brings ${p.slots} values, drawn as ${p.slots} slots. The items on the list fill them in turn.`,
  list: (p: { items: string; turns: string }) =>
    `With ${p.items} items the turbine’s turn comes ${p.turns} times.`,
  end: 'The stretches between two of its turns are hatched: what the turbine does there, nobody has seen.',
};
