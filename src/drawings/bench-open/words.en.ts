import { words as names } from '../../car/names/words.en.ts';

const { forward, reverse, high } = names.circuits;
/** A label of two lines is a list of two; '*' makes a line strong. */
export const words = {
  title: 'The bench, valve body off',
  ports: [forward, reverse, high],
  air: ['*Air', 'on a circuit, then', 'on its sister'],
  rag: ['rag over what stands open'],
  seal: ['seat of the transfer seal'],
  body: ['*Vacuum', 'on its bores'],
  dial: ['*Dial', 'on the shaft:', 'end play'],
  describe:
    'A transmission on the bench, seen from above with the valve body off. In the face of the case lie the ports of the forward, reverse and high circuits, and the seat of the transfer seal that two of them share. A nozzle puts air on forward, and a rag lies over what stands open. The valve body lies beside the case with a vacuum hose on one of its bores. A dial stands against the end of the shaft to read end play.',
};
