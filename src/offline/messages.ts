/** What a page says to the service worker. */
export type Ask = 'standing' | 'store' | 'take over';

/** What of the site is on the device, as the store itself says. */
export interface Standing {
  readonly have: number;
  readonly of: number;
  /** All files together on the device. */
  readonly bytes: number;
  /** The same as a host sends them, compressed. */
  readonly sent: number;
}

/** How many other windows of the site are open; with none, the new version is in force. */
export interface TakenOver {
  readonly others: number;
}
