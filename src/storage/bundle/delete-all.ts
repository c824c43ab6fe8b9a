/** Takes everything away that this site has put on the device. */
import { deleteDB, openDB } from 'idb';
import { storeStatus, type StoreStatus } from '../connection.ts';

/** What every key and every database of ours begins with. */
const PREFIX = 'hot-clutch:';
const DATABASES = ['answers', 'jobs', 'meetings', 'transmissions', 'tables'].map(
  (name) => PREFIX + name,
);
/** Another tab that is frozen does not let go of a database. */
const PATIENCE_MS = 4000;

/** Names that a browser does not tell are those that we know. */
async function databases(): Promise<readonly string[]> {
  try {
    const all = (await indexedDB.databases()).map(({ name }) => name ?? '');
    return all.filter((name) => name.startsWith(PREFIX));
  } catch {
    return DATABASES;
  }
}

/** Emptied first, so that nothing of it stays where another tab holds on to the shell. */
async function deleteDatabase(name: string): Promise<void> {
  const database = await openDB(name);
  const stores = [...database.objectStoreNames];
  if (stores.length > 0) {
    const transaction = database.transaction(stores, 'readwrite', { durability: 'strict' });
    const cleared = stores.map((one) => transaction.objectStore(one).clear());
    await Promise.all([...cleared, transaction.done]);
  }
  database.close();
  // Blocked: it goes when the other tab lets go, and there is nothing in it meanwhile.
  await new Promise<void>((resolve, reject) => {
    deleteDB(name, { blocked: () => resolve() }).then(resolve, reject);
  });
}

async function deleteInTime(name: string): Promise<StoreStatus> {
  let timer: ReturnType<typeof setTimeout> | undefined;
  const late = new Promise<StoreStatus>((resolve) => {
    timer = setTimeout(() => resolve('busy'), PATIENCE_MS);
  });
  try {
    return await Promise.race([deleteDatabase(name).then(() => 'ok' as const), late]);
  } catch (error) {
    return storeStatus(error);
  } finally {
    clearTimeout(timer);
  }
}

function deleteKeys(store: Storage): void {
  const keys = Array.from({ length: store.length }, (_, i) => store.key(i) ?? '');
  for (const key of keys) if (key.startsWith(PREFIX)) store.removeItem(key);
}

/** Answers first. Never throws; where something did not go the rest goes all the same. */
export async function deleteAll(): Promise<StoreStatus> {
  const faults: StoreStatus[] = [];
  for (const name of await databases()) faults.push(await deleteInTime(name));
  try {
    deleteKeys(localStorage);
    deleteKeys(sessionStorage);
  } catch (error) {
    faults.push(storeStatus(error));
  }
  return faults.find((status) => status !== 'ok') ?? 'ok';
}
