/** A label of two lines is a list of two; '*' makes a line strong. */
export const words = {
  title: 'What lies open together',
  panOff: ['pan off'],
  bodyOff: ['body', 'off'],
  ifHurt: ['only if', 'hurt'],
  pack: ['*Pack', 'if it slipped'],
  burnt: ['*Converter, cooler', 'if it burnt'],
  sleeve: ['*Connector sleeve', 'same rubber, same heat'],
  seal: ['*Seal, bridge or sleeve', 'what failed, its sisters'],
  solenoids: ['*Solenoids', 'if the sum says so'],
  filter: ['*Filter', 'with its neck seal'],
  gasket: ['*Pan gasket'],
  fluid: ['*Fluid, magnet', 'drained and cleaned'],
  describe:
    'The parts of a transmission drawn apart, in the order in which they come off from below. With the pan off: fluid, magnet, pan gasket, and the filter with its neck seal. With the valve body off: the solenoids on it, the seals with their bridge or sleeve between body and case, and the connector sleeve in the case wall. Dashed, because they wait for a reason: the pack if it slipped, converter and cooler if it burnt.',
};
