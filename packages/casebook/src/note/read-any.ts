import { refuseNoText } from '../doors';
import { yamlEntries } from '../front-yaml';
import { treeOf } from '../parse';
import { readNoteWith } from './read';
import type { NoteDocument } from './shapes';

/** Reads a note; see `readNoteWith`. */
export function readNote(text: string): NoteDocument {
  refuseNoText(text);
  return readNoteWith(treeOf, text, yamlEntries);
}
