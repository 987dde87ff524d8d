import { spreadsheetText } from '../state/spreadsheet';

/** More than this is no catalogue that a person keeps. */
const most = { bytes: 5_000_000, says: 'is over 5 MB; a catalogue is smaller, so split it' };

/** The text of a file of a catalogue; see `spreadsheetText`. */
export const fileText = (file: File): Promise<string> => spreadsheetText(file, most);
