/** A label of several lines is a list of them. */
export const words = {
  title: 'Six seals under a lens',
  split: ['*Split', 'opens when bent', 'leaks hot'],
  cut: ['*Cut at assembly', 'one sharp side', 'leaks hot'],
  swollen: ['*Swollen', 'fat and soft', 'grips, then tears'],
  set: ['*Set', 'flat, square edges', 'leaks cold first'],
  hard: ['*Hard', 'lip stands off', 'leaks cold'],
  aged: ['*Aged', 'glassy, cracks bent', 'cold, then always'],
  asNew: 'dashed: as it was new',
  describe:
    'Six seals under a lens. A split one, bent over a pin, opens in one place. A cut one has a clean slit with one sharp side, under the edge that did it. A swollen one bulges out of its groove, far over the dashed line of a new one. A set one lies in its groove flat and square, where a new one stood proud. A hard lip ends short of its wall, where a new one reached it. An aged one, bent over a pin, shows a row of fine cracks in a glassy skin.',
};
