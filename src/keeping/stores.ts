/** What reads and writes the device, loaded after the page is there. */
export { writeBundle, nothingKept } from '../storage/bundle/bundle.ts';
export { bringsNothing, compare, toChoose } from '../storage/bundle/compare.ts';
export { deleteAll } from '../storage/bundle/delete-all.ts';
export { closeDevice, device, gather } from '../storage/bundle/device.ts';
export { readBundle, tooLarge } from '../storage/bundle/read-bundle.ts';
export { allFile, allHere, takeIn } from '../storage/bundle/take-in.ts';
