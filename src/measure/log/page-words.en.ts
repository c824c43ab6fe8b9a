/** The text of the page round the reader: built into the page, never sent to a script. */
export const words = {
  title: 'Read a scan log',
  description:
    'Open a log from any scan tool: when the turbine stopped after selection, how far the clutch slipped, cold beside hot, and what the log cannot show.',
  lead: 'You have a log from the car. Open it here, say which column is what, and see when the turbine stopped and how far the clutch slipped, cold beside hot.',
  does: [
    'It finds every time that Drive or Reverse was selected from Park or Neutral, and the take-off after it.',
    'It times the turbine from selection until it stops, and says how sure that is. Ten readings a second cannot tell 0.8 s from 0.9 s.',
    'It tells you what the log cannot show, before you take a part out on the strength of it.',
  ],
  caution:
    'To make such a log the car is in gear with people near it: chock the wheels, hold the service brake, keep everybody out of its path, and drive with a second person who does the reading. The maker’s service information and your local rules come first.',
  howTitle: 'How the readings are taken',
  how: [
    'Selection fell somewhere between the last row in Park or Neutral and the first row in gear. The turbine stopped somewhere between the last row that turned and the first row under 30 rpm. So the time lies between the shortest and the longest that these four rows allow, and both are printed. Where a tool repeats a reading until the next one arrives, the stop may be as early as the first of the repeats.',
    'Slip is turbine speed less ratio times output speed, without its sign. On take-off it is read from one second to four seconds after the brake lets go. The largest slip can fall between two readings: it may be higher than the largest one by half of the step beside it.',
    'Where slip is called too much, it is by the limits of the training transmission’s controller, which are on the page about the model. They are nobody’s specification. Set the ratios of your car, or let the log show them, before you believe any slip on the road.',
  ],
};
