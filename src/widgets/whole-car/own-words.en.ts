import { words as names } from '../../car/words.en.ts';

/** The whole car on a sheet of one's own: fetched after the run. */
export const words = {
  title: 'On your own transmission',
  ask: 'Look for your sheets on this device',
  none: 'There is no sheet on this device yet.',
  label: 'Both cars are built from',
  training: 'The training transmission',
  enter: 'Enter a sheet of your own transmission',
  missed: 'The sheets could not be looked up. Load the page again, then try once more.',
  faulty: (name: string) =>
    `Something on the sheet “${name}” cannot be right. Open it and mend the fields that say so.`,
  how: 'It runs on the fluid of your sheet; the choice of fluid above counts for the training transmission. A prediction or a task goes back to that.',
  past: (clutch: string) =>
    `On your sheet the ${clutch} does not pass through the transfer seal, so a split there takes nothing from it. The picture draws a seal all the same.`,
  clutches: names.clutches,
  from: (p: { name: string; yours: string; assumed: string }) =>
    `From your numbers: “${p.name}”, ${p.yours} typed and ${p.assumed} assumed.`,
};
