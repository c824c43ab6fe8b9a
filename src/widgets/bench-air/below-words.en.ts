/** Fetched with the table that shows every place under air. */
export const words = {
  head: 'Every place of this unit under air:',
  caption: (p: { supply: string; hole: string }) => `${p.supply}, hole ${p.hole}, valve body off.`,
  later: 'say what the unit has, and it stands here, wet and dry.',
  place: 'air on',
  wet: 'held wet',
  dry: 'held dry',
  where: 'wet, most of it comes out',
  tight: 'nowhere',
  taken: {
    head: 'Taken for granted.',
    rig: 'The nozzle seals, air and parts are at bench temperature, and the same hole stands before the gauge each time. Real nozzles leak: press, and read twice.',
    wet: 'Wet, a film of fluid seats sound rings. Dry, they leak through all of the gap that they run with. Both are assumptions of ours. How much drying costs differs from make to make, and so a sister that lay there as long is worth more than any figure.',
    sound:
      'The thud comes when what stays behind the hole overcomes the return spring. Loud and soft go by how much air leaves. Real ears hear less well than that.',
    sizes:
      'The six units are invented, and so are their sizes. No limit for percent held is printed anywhere that we know of.',
  },
};
