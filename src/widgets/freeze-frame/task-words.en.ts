export const words = {
  tasks: {
    two: {
      words:
        'Another car, and you do not know what it has. P0731 is stored, on a drive with hot fluid. Read two of these three lines, no more, so that what is left is as open as a list of 3 or fewer.',
      hint: 'Before you press, see what each line is worth. After the first one look again.',
      after: (p: { open: string; temp: string; alone: string }) =>
        `Neither line would do alone. Nothing in Reverse can be a mild fault of what both share, but those drag the turbine down, and this one runs with the engine. Together they leave a list as open as ${p.open}. The temperature alone leaves ${p.temp} where the code left ${p.alone}: most leaks are hot faults. Frost would have split the list.`,
    },
    back: {
      words:
        'The split seal again. Somebody cleared it, ran it in the bay at idle warmth, and nothing came back. So he wrote “no fault found”. Find the coolest drive on which this car stores its code.',
      hint: 'The crack is the same all day. Ask what the fluid has to be like before the crack matters.',
      after: (p: {
        from: string;
        hot: string;
        cold: string;
        cars: string;
        silent: string;
        names: string;
        silentNames: string;
      }) =>
        `It stores from ${p.from} on. Of our ${p.cars} cars that store P0731 at ${p.hot}, ${p.silent} store nothing at ${p.cold}, and ${p.silentNames} of the ${p.names} faults behind them are among those. “Clear it and see” asks the wrong question unless you drive to the degrees in the frame. After Clear nobody knows them.`,
    },
    sound: {
      words:
        'All lines are read. One of these faults stores P0731 and P0736 on every drive, and the clutch has all the pressure that was commanded. Find the car with a good clutch.',
      hint: 'A shaft that stands has to read zero. What would a reading look like that cannot come down to it?',
      after: (p: { turbine: string; output: string }) =>
        `The frame says turbine ${p.turbine} and output ${p.output}, and it looks like slip. Its turbine sensor never reads less. A frame holds what the controller was told, so a false speed is in it as faithfully as a true one. With chocks set and a foot on the brake, in gear, in a car that pulls, the turbine has to read zero. That takes a minute, and it comes before any clutch.`,
    },
  },
  reached: {
    tooMany: 'Those are three lines. Take one back and see which you can do without.',
    open: (p: { open: string }) => `What is left is as open as a list of ${p.open}.`,
    silent: (p: { temp: string }) => `At ${p.temp} it stores nothing, and the crack is there.`,
    cooler: (p: { temp: string }) =>
      `At ${p.temp} it stores the code. Does a cooler drive do it too?`,
    noCode: 'On this drive it stores no code.',
    short: (p: { pressure: string; command: string }) =>
      `Not this one: a gauge would read ${p.pressure} where ${p.command} was commanded.`,
  },
};
