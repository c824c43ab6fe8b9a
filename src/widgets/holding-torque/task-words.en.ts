export const words = {
  tasks: {
    onlyJust: {
      words: (p: { need: string }) =>
        `Taking off asks the clutch for ${p.need}. Find the lowest pressure at which it still holds.`,
      hint: 'Look for the place where the line comes up out of the band. From below, raise the pressure until the word turns to “holds”. From above, come down until it turns to “slips”, and go back up by one.',
      after: (p: { needPressure: string; springPressure: string; idlePressure: string }) =>
        `It holds from ${p.needPressure} on, so you stand at the edge. The first ${p.springPressure} go to the spring. Standing in gear at idle needs ${p.idlePressure}: a car can stand in gear with less than half of what it needs to drive off.`,
    },
    worn: {
      words: (p: { full: string }) =>
        `Now wear the plates. The gauge stays at ${p.full}. Lower the friction, step by step, until the car can no longer take off, and stop there.`,
      hint: 'One step at a time near the edge. If you went too far, come back up by one.',
      after: (p: { wornFriction: string; wornTorque: string; need: string }) =>
        `At friction ${p.wornFriction} it carries ${p.wornTorque} of the ${p.need} it needs, and the gauge has not moved. Good pressure that does not hold: look at the plates.`,
    },
    plates: {
      words: (p: { full: string }) =>
        `Somebody built this pack with four friction faces. The controller gives ${p.full} and no more. What is the smallest number of faces that can take off?`,
      hint: 'Add faces one by one. Torque grows by the same amount with each.',
      after: (p: { eightFaces: string; need: string }) =>
        `Each face carries as much as the next, so eight carry eight tenths of what ten do: ${p.eightFaces}. That is enough for ${p.need}. The training clutch has ten. A plate left out costs two faces, and no gauge shows it. Count them as you build.`,
    },
    book: {
      words: (p: {
        book: string;
        how: string;
        bookPower: string;
        bookSpeed: string;
        bookPressure: string;
        bookFriction: string;
        bookFaces: string;
        bookArea: string;
        bookRadius: string;
      }) =>
        `For doubters, and free to skip: check the model against a book. ${p.book}: ${p.how} The book finds ${p.bookPower} at ${p.bookSpeed}. Pick it from the list, or set it by hand (${p.bookPressure}, friction ${p.bookFriction}, ${p.bookFaces} faces, ${p.bookArea}, ${p.bookRadius}, no spring).`,
      hint: 'The list is called “Which clutch”. By hand: watch the spring, the book has none.',
      after: (p: {
        modelTorque: string;
        modelPower: string;
        bookSpeed: string;
        bookArea: string;
      }) =>
        `The model holds ${p.modelTorque}, which at ${p.bookSpeed} carries ${p.modelPower}: the book’s number. Pressure, area, friction, faces and radius do it for any disc clutch; ours adds the spring. (The book lets pressure fall toward the outer edge, so its ring counts as ${p.bookArea} under full pressure.)`,
    },
  },
  reached: {
    holds: (p: { has: string; need: string }) =>
      `This clutch can carry ${p.has}; taking off asks for ${p.need}.`,
    power: (p: { power: string; speed: string }) => `Your clutch carries ${p.power} at ${p.speed}.`,
  },
};
