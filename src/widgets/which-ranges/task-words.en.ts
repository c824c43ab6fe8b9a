interface ColdAndHot {
  cold: string;
  hot: string;
}

export const words = {
  tasks: {
    lineLow: {
      words:
        'Car one: the line reads low in all four columns, cold and hot, idle and load. Yet the cooler gets all it ever did. Which fault makes that pattern?',
      hint: 'A leak gets worse hot, and it takes what the cooler lives on. What lowers the line without using up a drop?',
      after: (p: ColdAndHot) =>
        `Pressure control. The line is not starved, it is told to be low: ${p.cold} cold and ${p.hot} hot at idle. Nothing leaks, so there is flow to spare. The same reading cold and hot is its mark.`,
    },
    oneRange: {
      words:
        'Car two: forward alone is low, in all four columns, and hot it reads nearly what it reads cold (seven tenths or more). Reverse, high and the line read right. What makes that pattern?',
      hint: 'One range, so a place that only its circuit has. Rings, piston seal or port: which of them leaks like a hole?',
      after: (p: {
        hole: string;
        holeCold: string;
        holeHot: string;
        ringsCold: string;
        ringsHot: string;
      }) =>
        `A missing plug or check ball. A hole of ${p.hole} reads ${p.holeCold} cold and ${p.holeHot} hot at idle. Worn rings are a gap: they read ${p.ringsCold} cold and ${p.ringsHot} hot. One range says where to look. Cold against hot says what to look for.`,
    },
    lookAlike: {
      words: (p: { wornLine: string }) =>
        `Set here: a worn pump. Hot at idle the line has ${p.wornLine}; every other gauge reads right. Find another fault that gives these gauges the very same words.`,
      hint: (p: { half: string }) =>
        `Something else that takes from the line itself, hot more than cold. It may be less bad than ${p.half}.`,
      after: (p: { boreLine: string; boreBad: string }) =>
        `A worn regulator bore does it (${p.boreLine} at ${p.boreBad}), and so does fluid so low that the pump draws air. Gauges alone cannot tell them apart. So check the level first: it takes six minutes. Then look for the test that comes out differently for the two that are left.`,
    },
    allRight: {
      words:
        'Car three: it slips when you ask a lot of it, and every gauge reads right, cold and hot. In every range the clutch carries less than it should. Find the fault. The table of torque lies below.',
      hint: 'The pressure is there. What else goes into the torque a clutch holds?',
      after:
        'Worn friction. No gauge sees it, since pressure is only one part of the torque. Good pressure in every range while it slips: look at the plates, and at the fluid, since all packs seldom wear out at once. (The false turbine sensor also leaves every gauge right. But there the clutch carries all it should, and only the code is wrong.)',
    },
  },
};
