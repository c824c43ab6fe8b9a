export const words = {
  tasks: {
    letsGo: {
      words: (p: { crack: string; commanded: string; has: string }) =>
        `Hot, with the crack of the course, ${p.crack}, and ${p.commanded} commanded, the clutch has ${p.has} and stands in gear. From which engine speed does it slip? Go there, a step too far at the most.`,
      hint: 'Raise the engine until the word under the picture turns from holds to slips.',
      after: (p: { idle: string; edge: string }) =>
        `From ${p.idle} to ${p.edge} is a touch of the pedal. That is why such a car stands well in gear and slips on take-off, unless its controller raises the pressure in time.`,
    },
    firm: {
      words: (p: { speed: string }) =>
        `A firm take-off asks for what the clutch must hold at ${p.speed}. Find the pressure that holds it, with next to nothing to spare.`,
      hint: 'Move the pressure until what the clutch can hold comes up to what is asked.',
      after: (p: { needs: string; idleNeeds: string }) =>
        `It holds from ${p.needs} on, against ${p.idleNeeds} at idle. Pressure does not go with the square: the spring takes its share first, and takes it once.`,
    },
    heat: {
      words: (p: { heat: string }) =>
        `Nothing moves, so all of the engine’s power turns into heat. Find the engine speed at which ${p.heat} goes into the fluid, to a tenth.`,
      hint: 'Torque goes with the square of the speed, and power is torque times speed once more.',
      after: (p: { double: string; rise: string; stall: string }) =>
        `Power goes with the cube: twice the speed, eight times the heat. At the stall, ${p.stall}, it is ${p.double}, and the whole transmission warms by ${p.rise} a second. So seconds count.`,
    },
  },
  reached: {
    holds: (p: { speed: string; asked: string; holds: string }) =>
      `At ${p.speed} it is asked for ${p.asked} and can hold ${p.holds}.`,
    heat: (p: { speed: string; heat: string }) => `At ${p.speed} it is ${p.heat}.`,
  },
};
