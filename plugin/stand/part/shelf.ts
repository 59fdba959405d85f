/// <reference lib="dom" />
/** Where the part on the stand is kept from one visit to the next: in the reader's own browser, nowhere else. */

/** A file as it was chosen. */
export interface ShelvedFile {
  readonly name: string;
  readonly bytes: Uint8Array;
}

/** Keeps a file, or with null forgets it. A browser that keeps nothing is no fault. */
export async function shelve(file: ShelvedFile | null): Promise<void> {
  await withShelf('readwrite', (shelf) => (file ? shelf.put(file, 'part') : shelf.delete('part'))).catch(
    () => {},
  );
}

/** The file that was kept, or null. */
export async function shelved(): Promise<ShelvedFile | null> {
  const found = await withShelf('readonly', (shelf) => shelf.get('part')).catch(() => null);
  return (found as ShelvedFile | undefined) ?? null;
}

function withShelf(mode: IDBTransactionMode, work: (shelf: IDBObjectStore) => IDBRequest): Promise<unknown> {
  return new Promise((resolve, reject) => {
    const opening = indexedDB.open('bellhand', 1);
    opening.onupgradeneeded = () => opening.result.createObjectStore('shelf');
    opening.onerror = () => reject(opening.error);
    opening.onsuccess = () => {
      const request = work(opening.result.transaction('shelf', mode).objectStore('shelf'));
      request.onsuccess = () => resolve(request.result);
      request.onerror = () => reject(request.error);
    };
  });
}
