import { dirname, join } from 'node:path';
import {
  isNote,
  type JudgedNote,
  judgeCase,
  judgedNote,
  judgeNote,
  type Leaning,
  noteEverybody,
  noteForms,
  onOneLine,
  readCase,
  readNote,
  type Under,
} from '@tarebook/casebook';
import type { Voice } from '@tarebook/rules/engine';
import { BadInput, named, readText, troubleLines } from './files';
import { asBadInput } from './house';
import { leavingAsText, type Wanted } from './leaving';

const today = (): string => new Date().toISOString().slice(0, 10);

/** A path of a note is one from the note itself; else one from where the command runs. */
async function leanedText(note: string, path: string): Promise<{ file: string; text: string }> {
  const beside = note === '-' ? path : join(dirname(note), path);
  try {
    return { file: beside, text: await readText(beside) };
  } catch (problem) {
    if (!(problem instanceof BadInput) || beside === path) throw problem;
    return readText(path).then(
      (text) => ({ file: path, text }),
      () => {
        throw problem;
      },
    );
  }
}

async function leaningOf(note: string, path: string, under: Under): Promise<Leaning> {
  const own = (says: string) => new BadInput(`${named(note)}: \`leans-on\`: ${says}`);
  const { file, text } = await leanedText(note, path).catch((problem: unknown) => {
    throw problem instanceof BadInput ? own(problem.message) : problem;
  });
  if (isNote(text)) {
    throw own(`${named(file)} is a note itself; name a worked case, or leave it out.`);
  }
  const doc = readCase(text, under.asOf);
  const [first] = doc.troubles;
  if (first) throw own(troubleLines(file, [first]));
  if (!doc.topic) throw own(`${named(file)} is no worked case.`);
  const answer = await judgeCase(doc, under).catch((problem: unknown) => {
    throw asBadInput(file, problem);
  });
  return { path, title: doc.front.title, topic: doc.topic, answer };
}

/**
 * A note as it stands on its day: that of `--as-of`, else today.
 *
 * @throws BadInput when it cannot be read, or the case it leans on cannot be judged
 */
export async function noteOf(file: string, text: string, under: Under): Promise<JudgedNote> {
  const note = readNote(text);
  if (note.troubles.length > 0) throw new BadInput(troubleLines(file, note.troubles));
  const leaning =
    note.leansOn === undefined ? undefined : await leaningOf(file, note.leansOn, under);
  return judgeNote(note, under.asOf ?? today(), leaning);
}

/** A note saved as JSON holds its whole document. */
export function savedNote(text: string): string | undefined {
  try {
    const saved: unknown = JSON.parse(text.replace(/^\uFEFF/, ''));
    if (typeof saved !== 'object' || saved === null) return undefined;
    if (!('topic' in saved) || saved.topic !== 'note' || !('asked' in saved)) return undefined;
    const { asked } = saved;
    if (typeof asked !== 'object' || asked === null || !('document' in asked)) return undefined;
    return typeof asked.document === 'string' ? asked.document : undefined;
  } catch {
    return undefined;
  }
}

function leavingOfNote(judged: JudgedNote, { everybody, forms, asking }: Wanted, voice: Voice) {
  if (asking !== undefined) {
    throw new BadInput(
      `\`--asking\`: “${onOneLine(asking)}” is nothing that a note is asked; leave it out.`,
    );
  }
  return {
    ...(everybody && { everybody: noteEverybody(judged, voice) }),
    ...(forms && { asking: null, forms: noteForms(judged, voice) }),
  };
}

export function noteAsJson(judged: JudgedNote, wanted: Wanted, voice: Voice = {}): object {
  return { ...judgedNote(judged), ...leavingOfNote(judged, wanted, voice) };
}

export function noteAsText(judged: JudgedNote, wanted: Wanted, voice: Voice = {}): string {
  const leaving = leavingOfNote(judged, wanted, voice);
  if (wanted.everybody || wanted.forms) return leavingAsText(leaving);
  return `${judged.outcome.toUpperCase()}\n\n${noteForms(judged, voice).sheet}\n`;
}
