/** Whether a share is as high as another, within a tenth: names that nobody would rank. */
const LEVEL = 0.9;
export const isLevel = (share: number, with_: number): boolean => share >= LEVEL * with_;
/** More names than this are not "in front". */
export const MOST_IN_FRONT = 3;
