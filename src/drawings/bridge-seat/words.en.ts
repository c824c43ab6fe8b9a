/** A label of two lines is a list of two; '*' makes a line strong. */
export const words = {
  title: 'A bridge pressed down by hand',
  body: ['*Valve body', 'waits'],
  bridge: ['*Bridge'],
  case: ['*Case'],
  seated: ['*Seated', 'Press either end:', 'nothing moves.'],
  rocks: ['*Rocks', 'Press one end:', 'the other lifts.'],
  daylight: ['daylight'],
  describe:
    'Two sections through case and bridge, with the valve body still held above them. On the left the bridge lies flat on the case, with both of its feet and their seals down in their bores. Pressed at either end, nothing moves. On the right a chip in one bore holds that end up. There is daylight under it, and the bridge rocks when it is pressed. Neither can be seen once the valve body is on.',
};
