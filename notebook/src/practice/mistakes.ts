import { type CaseDocument, setCell, setFact } from '@tarebook/casebook';
import { convert, readQuantity, showNumber, unitOf, wasMisread } from '@tarebook/rules/quantity';
import { compared, leftOpen, type Question, questionOf } from '../class/predict';
import { judge } from '../state/judged';
import { readDocument } from '../state/reading';

/** What learners get wrong again and again, as a trainer calls it. */
export const mistakes = {
  dry: 'dry weight taken for loaded',
  payload: 'payload forgotten',
  brochure: 'brochure taken for the label',
  open: 'said for sure what is not known',
  known: 'left open what can be told',
} as const;
export type Mistake = keyof typeof mistakes;
export const isMistake = (id: string | undefined): id is Mistake =>
  id !== undefined && Object.hasOwn(mistakes, id);

const told = (doc: CaseDocument, id: string): string =>
  doc.blocks
    .flatMap((block) => (block.kind === 'facts' ? block.rows : []))
    .find((row) => row.id === id)?.value ?? '';

const withFact = (text: string, id: string, value: string): string =>
  setFact(readDocument(text), id, value);

/** The case as if the rows of some lists weighed nothing. */
function weightless(text: string, lists: (fact: string) => boolean): string {
  let now = text;
  for (const block of readDocument(text).blocks) {
    if (block.kind !== 'list' || !lists(block.fact)) continue;
    for (const [at, row] of block.rows.entries()) {
      if (row.cells.weight) now = setCell(readDocument(now), block.fact, at, 'weight', '0 lb');
    }
  }
  return now;
}

const trailerThings = [
  'trailer.propane',
  'trailer.freshWater',
  'trailer.grayWater',
  'trailer.blackWater',
];

/** Nothing is in the trailer, and its tongue is the one of the sticker. */
function asDry(doc: CaseDocument): readonly string[] {
  const empty = weightless(doc.text, (fact) => fact.startsWith('trailer.'));
  const dry = trailerThings
    .filter((id) => told(doc, id) !== '')
    .reduce((text, id) => withFact(text, id, id === 'trailer.propane' ? '0 lb' : '0 gal'), empty);
  const tongue = told(doc, 'trailer.dryTongueWeight');
  return [dry, ...(tongue ? [withFact(dry, 'trailer.measuredTongueWeight', tongue)] : [])];
}

/** Nobody and nothing rides along, or the payload allows for anything. */
function withoutPayload(doc: CaseDocument): readonly string[] {
  const empty = weightless(doc.text, (fact) => fact.startsWith('load.'));
  const all =
    told(doc, 'vehicle.placardPayload') === ''
      ? []
      : [withFact(doc.text, 'vehicle.placardPayload', '99,000 lb')];
  const bare =
    told(doc, 'hitch.hardwareWeight') === ''
      ? empty
      : withFact(empty, 'hitch.hardwareWeight', '0 lb');
  return [empty, bare, ...all];
}

/** The payload as one reckons it from a brochure: gross rating less curb weight. */
function byBrochure(doc: CaseDocument): readonly string[] {
  const [gross, curb] = ['vehicle.gvwr', 'vehicle.curbWeight'].map((id) => {
    const read = readQuantity(told(doc, id));
    return wasMisread(read)
      ? undefined
      : convert(read.from, read.unit ?? unitOf('lb'), unitOf('lb'));
  });
  if (gross === undefined || curb === undefined || gross <= curb) return [];
  return [withFact(doc.text, 'vehicle.placardPayload', `${showNumber(gross - curb, 0)} lb`)];
}

const worlds: readonly (readonly [Mistake, (doc: CaseDocument) => readonly string[]])[] = [
  ['dry', asDry],
  ['brochure', byBrochure],
  ['payload', withoutPayload],
];

const isOpen = (question: Question, said: string): boolean =>
  said === leftOpen || (question.result === 'verdict' && /cannot|unknown/i.test(said));

/**
 * Which mistake a prediction looks like that was not met: the one under which it would have been.
 * @returns undefined where it was met, or looks like none of them
 */
export function mistakeOf(
  doc: CaseDocument,
  question: Question,
  said: string,
): Mistake | undefined {
  if (question.kind === 'several' || compared(said, question, 'us').met) return undefined;
  const found = question.kind === 'word' ? question.found : '';
  const openFound =
    question.kind === 'word'
      ? isOpen(question, found)
      : !Number.isFinite(question.found.lo + question.found.hi);
  for (const [mistake, texts] of worlds) {
    for (const text of texts(doc)) {
      if (text === doc.text) continue;
      const { doc: other, answer, current } = judge(text);
      if (!answer || !current) continue;
      const then = questionOf(other, answer);
      if (then.kind === question.kind && compared(said, then, 'us').met) return mistake;
    }
  }
  if (isOpen(question, said)) return openFound ? undefined : 'known';
  return openFound ? 'open' : undefined;
}
