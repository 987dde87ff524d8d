import * as z from 'zod/mini';
import { described } from '../check/given';
import { sayProblem } from '../check/messages';
import { InputError } from '../check/problem';
import type { HouseLayer } from './shapes';

/** Made when a house is first read: most who judge never do. */
function makeShapes() {
  // Its faster way builds code from text, which a strict content-security policy forbids.
  z.config({ jitless: true });
  const text = z.string();
  const value = z.strictObject({
    value: z.union([text, z.number()]),
    unit: z.optional(text),
    reason: text,
    from: z.optional(text),
  });
  const layer = z.strictObject({ topic: text, name: text, parameters: z.record(text, value) });
  const list = z.array(layer);
  return { layer, list, file: z.union([layer, list]) };
}

export const wanted =
  '{ "topic": "tow-fit", "name": "…", "parameters": { "margin.other": { "value": "10 %", "reason": "…" } } }, or a list of these';

function refuse(code: 'not-json' | 'not-a-house-layer', fact: string, found: string): never {
  throw new InputError([{ code, fact, found, wanted }], sayProblem);
}

/** Where in the file the first thing stands that is not as it should be. */
function firstWrong(data: unknown, { layer, list }: ReturnType<typeof makeShapes>): string {
  const shape = Array.isArray(data) ? list : layer;
  const [issue] = shape.safeParse(data).error?.issues ?? [];
  const unknown = issue?.code === 'unrecognized_keys' ? issue.keys.slice(0, 1) : [];
  const path = [...(issue?.path ?? []), ...unknown].map(String).join(', ');
  return path === '' ? 'house layer' : path;
}

/**
 * Reads a house file: JSON, one layer or a list of them.
 *
 * @throws InputError saying in one sentence where it is not as it should be
 */
export function readHouse(source: string): readonly HouseLayer[] {
  if (typeof source !== 'string') refuse('not-json', 'house layer', described(source));
  let data: unknown;
  try {
    data = JSON.parse(source.replace(/^\ufeff/, ''));
  } catch {
    return refuse('not-json', 'house layer', source.trim().slice(0, 40));
  }
  const shapes = makeShapes();
  const read = shapes.file.safeParse(data);
  if (!read.success) {
    return refuse('not-a-house-layer', firstWrong(data, shapes).slice(0, 80), '');
  }
  return Array.isArray(read.data) ? read.data : [read.data];
}
