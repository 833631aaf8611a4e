/**
 * The logbook on this device. Every act is written at once, in one transaction, and never rewritten.
 * When the browser gives no room, entries are kept in memory and `deviceState` says so.
 */
// The core of signals alone: lessons follow the logbook without a component library.
import { computed, type ReadonlySignal, signal } from '@preact/signals-core';
import { type DBSchema, type IDBPDatabase, openDB } from 'idb';
import { append, emptyHead, logbookToText, newLogbook, nextEvent } from '../../logbook/log.ts';
import { type Progress, progressOf } from '../../logbook/progress.ts';
import type { Act, Logbook, LogEvent } from '../../logbook/types.ts';
import { digestOf } from '../../units/digest.ts';
import { filePiece } from '../../wording/file-name.ts';
import { download } from '../download.ts';

export type DeviceState =
  /** Entries are safe on this device; `savedAt` is the time of the last one. */
  | { kind: 'ok'; savedAt?: string }
  /** The browser keeps nothing (a private window, a full disk): only the file will last. */
  | { kind: 'no-room' };

/** undefined until the device has been read. */
export const logbook = signal<Logbook | undefined>(undefined);
export const deviceState = signal<DeviceState>({ kind: 'ok' });
export const progress: ReadonlySignal<Progress | undefined> = computed(() =>
  logbook.value ? progressOf(logbook.value.events) : undefined,
);

interface Store extends DBSchema {
  events: { key: number; value: LogEvent };
  about: { key: string; value: string };
}

const hasDevice = typeof indexedDB !== 'undefined';
let store: IDBPDatabase<Store> | undefined;
const others = typeof BroadcastChannel === 'undefined' ? undefined : new BroadcastChannel('benchbook-logbook');

const contentFingerprint = () =>
  document.querySelector('meta[name="benchbook-content"]')?.getAttribute('content') ?? 'unknown';

const randomId = () => Array.from(crypto.getRandomValues(new Uint8Array(10)), (b) => (b % 36).toString(36)).join('');

/** Resolves when the device has been read for the first time. */
const opened: Promise<void> = hasDevice ? open() : Promise.resolve();

async function open(): Promise<void> {
  try {
    store = await openDB<Store>('benchbook', 1, {
      upgrade(db) {
        db.createObjectStore('events', { keyPath: 'n' });
        db.createObjectStore('about');
      },
    });
    await refresh();
    // An entry made on another page means reading again.
    others?.addEventListener('message', () => void refresh());
  } catch {
    noRoom();
  }
}

function noRoom(): void {
  deviceState.value = { kind: 'no-room' };
  logbook.value ??= newLogbook(randomId(), contentFingerprint());
}

async function refresh(): Promise<void> {
  if (!store) return;
  const tx = store.transaction(['events', 'about'], 'readwrite');
  const about = tx.objectStore('about');
  const id = (await about.get('id')) ?? randomId();
  await about.put(id, 'id');
  const events = await tx.objectStore('events').getAll();
  const head = (await about.get('head')) ?? emptyHead;
  await tx.done;
  logbook.value = { ...newLogbook(id, contentFingerprint()), head, events };
  const savedAt = events.at(-1)?.at;
  deviceState.value = savedAt === undefined ? { kind: 'ok' } : { kind: 'ok', savedAt };
}

/** Writes one act. Acts are written in the order of the calls; resolves when this one is on the device. */
export function record(act: Act): Promise<void> {
  const written = queue.then(() => write(act));
  queue = written.catch(() => undefined);
  return written;
}
let queue: Promise<void> = opened;

async function write(act: Act): Promise<void> {
  const at = new Date().toISOString();
  if (!store || deviceState.value.kind === 'no-room') {
    logbook.value = append(logbook.value ?? newLogbook(randomId(), contentFingerprint()), act, at);
    return;
  }
  try {
    const durability = act.act === 'hold-passed' || act.act === 'handed-in' ? 'strict' : 'default';
    const tx = store.transaction(['events', 'about'], 'readwrite', { durability });
    // The last entry is read inside the transaction: another page may have written since.
    const head = (await tx.objectStore('about').get('head')) ?? emptyHead;
    const n = (await tx.objectStore('events').count()) + 1;
    const event = nextEvent(n, head, act, at);
    const newHead = digestOf(event);
    await tx.objectStore('events').add(event);
    await tx.objectStore('about').put(newHead, 'head');
    await tx.done;
    const known = logbook.value;
    if (known && known.events.length === n - 1) {
      logbook.value = { ...known, head: newHead, events: [...known.events, event] };
      deviceState.value = { kind: 'ok', savedAt: at };
    } else {
      await refresh();
    }
    others?.postMessage(n);
  } catch {
    noRoom();
    logbook.value = append(logbook.value ?? newLogbook(randomId(), contentFingerprint()), act, at);
  }
}

/** Records that a file was kept, and hands the whole logbook to the browser: `logbook-bench-7-2026-11-17.json`. */
export async function saveFile(): Promise<void> {
  await record({ act: 'file-kept' });
  const book = logbook.value;
  if (!book) return;
  const who = filePiece(progress.value?.student ?? '', 'no-name');
  const day = new Date().toISOString().slice(0, 10);
  download(`logbook-${who}-${day}.json`, logbookToText(book), 'application/json');
}

/** Puts a logbook read from a file on this device. Only for a device whose own logbook is empty or an older copy of it. */
export async function restore(book: Logbook): Promise<void> {
  await opened;
  if (!store) {
    logbook.value = book;
    return;
  }
  const tx = store.transaction(['events', 'about'], 'readwrite', { durability: 'strict' });
  await tx.objectStore('events').clear();
  for (const event of book.events) await tx.objectStore('events').add(event);
  await tx.objectStore('about').put(book.id, 'id');
  await tx.objectStore('about').put(book.head, 'head');
  await tx.done;
  await refresh();
  others?.postMessage('restored');
}

/** Deletes the logbook from this device and begins an empty one with a new id. */
export async function startOver(): Promise<void> {
  await restore(newLogbook(randomId(), contentFingerprint()));
}
