import { openedAside } from '../aside/first';
import { caseAddress } from './address';
import { freeName } from './everything';
import { allFiled } from './filed';
import { allKept, keep } from './kept';
import type { Opened } from './opened';

/** What came of opening some files: addresses of cases, and what was wrong, one sentence each. */
export type Arrived = {
  readonly cases: readonly { readonly href: string; readonly from: string }[];
  readonly says: readonly string[];
};

type Here = { readonly topic: string; readonly name: string; readonly text: string };

/** Puts a case beside those that are here; one that is here already is not kept twice. */
async function putBeside(opened: Here, here: Here[]): Promise<string> {
  const same = here.find(({ topic, text }) => topic === opened.topic && text === opened.text);
  if (same) return caseAddress(same.topic, same.name);
  const taken = here.filter(({ topic }) => topic === opened.topic).map(({ name }) => name);
  const name = freeName(opened.name, new Set(taken));
  try {
    await keep({ ...opened, name, at: Date.now() });
  } catch {
    // A device that keeps nothing still opens it: the whole case goes into the address.
    const { pack } = await import('./link');
    return `${caseAddress(opened.topic, name)}/${await pack(opened.text)}`;
  }
  here.push({ ...opened, name });
  return caseAddress(opened.topic, name);
}

/** Opens files as cases, each on its own: one that cannot be read stands in no other's way. */
export async function openFiles(files: readonly File[]): Promise<Arrived> {
  const kept = await allKept().catch(() => []);
  const own = new Set(kept.map(({ topic, name }) => `${topic}/${name}`));
  const filed = (await allFiled()).filter(({ topic, name }) => !own.has(`${topic}/${name}`));
  const here: Here[] = [...kept, ...filed];
  const cases: { href: string; from: string }[] = [];
  const says: string[] = [];
  for (const file of files) {
    const opened = await read(file);
    if ('says' in opened) says.push(opened.says);
    else cases.push({ href: await putBeside(opened, here), from: file.name });
  }
  return { cases, says };
}

async function read(file: File): Promise<Opened> {
  let bytes: Uint8Array<ArrayBuffer>;
  try {
    bytes = new Uint8Array(await file.arrayBuffer());
  } catch {
    return {
      says: `${file.name} could not be read from this device; a folder cannot be opened, files can.`,
    };
  }
  try {
    return await openedAside(file.name, bytes);
  } catch {
    return {
      says: `${file.name} was not read: the network is away; open it again once it is back.`,
    };
  }
}
