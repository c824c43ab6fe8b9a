import { words as planner } from './words.en.ts';

/** Which transmission an answer goes by: fetched with the answers. */
export const words = {
  fromYours: (p: { name: string; yours: string; assumed: string }) =>
    `From your numbers: “${p.name}”, ${p.yours} typed and ${p.assumed} assumed.`,
  assumed: {
    training: planner.assumed,
    second:
      'For the second training transmission, which is invented. How often faults come, how far readings err and how long tests take are assumptions of this site: no published figures exist.',
    own: 'From your numbers, and from the training transmission’s where you typed none. How often faults come, how far readings err and how long tests take are assumptions of this site: no published figures exist.',
  },
};
