import { IDBFactory } from 'fake-indexeddb';
import { vi } from 'vitest';
import { closeDevice, device, gather, type Device } from '../../../src/storage/bundle/device.ts';
import type { Bundle } from '../../../src/storage/bundle/bundle.ts';
import { allFile, takeIn } from '../../../src/storage/bundle/take-in.ts';
import { fakeArea, type FakeArea } from '../fake-area.ts';

export const NOW = 1_796_100_000_000;

export interface TestDevice {
  readonly area: FakeArea;
  readonly device: Device;
  /** Makes this one the device that the code meets. */
  readonly use: () => void;
}

/** A device of its own, with databases and browser storage of its own. */
export function aDevice(now: () => number = () => NOW): TestDevice {
  const factory = new IDBFactory();
  const area = fakeArea();
  const use = (): void => {
    vi.stubGlobal('indexedDB', factory);
  };
  use();
  return { area, device: device(now, area), use };
}

export async function filled(bundle: Bundle, now?: () => number): Promise<TestDevice> {
  const one = aDevice(now);
  await takeIn(one.device, bundle, allFile);
  return one;
}

/** What a bundle holds, but for whose and when. */
export const contentOf = (bundle: Bundle): Bundle => ({ ...bundle, name: null, written: 0 });
export const on = async ({ device: one }: TestDevice): Promise<Bundle> =>
  contentOf((await gather(one)).bundle);
export const close = (one: TestDevice): Promise<void> => closeDevice(one.device);
