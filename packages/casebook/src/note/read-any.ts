import { yamlEntries } from '../front-yaml';
import { treeOf } from '../parse';
import { readNoteWith } from './read';
import type { NoteDocument } from './shapes';

/** Reads a note; see `readNoteWith`. */
export const readNote = (text: string): NoteDocument => readNoteWith(treeOf, text, yamlEntries);
