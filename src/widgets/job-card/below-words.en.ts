export const words = {
  lines: {
    head: 'One line left out, and what the car reads.',
    caption:
      'Each by itself, with the thing gone wrong unseen. Taps at idle, cold and hot; the stick in its window.',
    line: 'Left out',
    air: 'Air, forward',
    forward: 'Forward tap',
    reverse: 'Reverse tap',
    stick: 'Stick',
    right: 'Nothing',
    middle: 'right',
    over: (p: { mm: string }) => `${p.mm} over`,
    pair: (p: { cold: string; hot: string }) => `${p.cold}, ${p.hot}`,
  },
  taken: {
    head: 'What is taken for granted.',
    worst:
      'Whoever skips a line here has bad luck every time: the lip is nicked, the ring gap is wide, a ball is missing, the bridge stands off. How bad is invented. The bridge stands off by as much as the seal of the course was cracked.',
    air: 'Air sits on the ports of the case, so it meets lip and rings. Ball and bridge lie past the nozzle, and it cannot meet them. On another transmission they may lie elsewhere: the maker’s drawing says.',
    left: 'Dirt, end play, torque, a neck seal and the learned values change no reading here, since the model has none of them. Each can bring the car back all the same.',
    pulls:
      'A range pulls if its clutch can hold a firm take-off, at 1500 rpm on the command that goes with it. The taps are read at idle.',
  },
};
