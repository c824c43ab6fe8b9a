export const words = {
  tasks: {
    hand: {
      words:
        'Both controllers saw slip and gave up. The car by wire is in Park. The one by cable stands on a slope with its lever in Drive and its clutch empty. Make it hold.',
      hint: 'What is the only thing in that car that reaches the pawl?',
      after:
        'With a cable, Park is in your hand and nowhere else. In a car that has just dropped to Neutral, keep your foot on the brake, pull the lever to Park and set the parking brake before you get out. Then chock it.',
    },
    shut: {
      words: (p: { need: string; near: string }) =>
        `The cable is set wrong. Close the port of the manual valve until the hot clutch can no longer take off at ${p.need}. Stop within ${p.near} of that point.`,
      hint: 'Read the hot pressure under the drawings. Down to a half hardly anything happens.',
      after: (p: { cool: string; has: string; late: string }) =>
        `At ${p.cool} the same cable leaves ${p.has}, and a gauge finds nothing. But cold the turbine already takes ${p.late} to stop. A late engagement cold and weak hot: look at level and cable before you take a transmission out. It costs minutes.`,
    },
    home: {
      words:
        'Neither controller has any power. The car by wire is stuck in Park. Find out how the one by cable can still be driven.',
      hint: 'The lever still moves the valve. Then it depends on how the transmission is built.',
      after:
        'A valve body that holds one gear by oil alone gets its car home. One that vents, or one by wire, waits for a truck. Ask which you have before you promise anything on the phone.',
    },
    neutralFirst: {
      words:
        'Find the case in which the controller by wire goes to fail-safe and does not select Park at once.',
      hint: 'What would a pawl do in a gear that turns?',
      after:
        'It waits. A pawl at speed would only ratchet and break teeth. So the driver loses drive on the road, coasts with brakes and steering, and finds the car in Park when it has slowed. That is one complaint, not two.',
    },
  },
  reached: (p: { has: string; need: string }) =>
    `The hot clutch has ${p.has}, and taking off needs ${p.need}.`,
};
