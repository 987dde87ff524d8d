import { addRow, removeFact, removeRow, setCell, setFact } from '@tarebook/casebook';
import { turned } from './loads-turned';
import { withOneLess, withOneMore } from './people-counted';

/** What changes the text of a case: fetched once a case stands, for nothing is typed before. */
export const edits = {
  addRow,
  removeFact,
  removeRow,
  setCell,
  setFact,
  turned,
  withOneLess,
  withOneMore,
};
