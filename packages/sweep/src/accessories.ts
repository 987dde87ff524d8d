import { convert, readQuantity, unitOf, wasMisread } from '@tarebook/rules/quantity';
import type { Entry } from './catalogue';
import { type RateBook, readRates } from './rates';
import { type RefusedRow, readSheet } from './sheet';
import { readTable, type Wanted } from './table';

/** Where an accessory sits: at one of the five places of a floor plan, on the hitch, or in the vehicle. */
const places = ['nose', 'front', 'axle', 'rear', 'tail', 'hitch', 'vehicle'] as const;
type Place = (typeof places)[number];

export type Accessory = {
  readonly id: string;
  readonly label: string;
  /** Pounds. */
  readonly weight: number;
  /** Undefined where nobody tells. */
  readonly sits: Place | undefined;
  /** Feet ahead of the trailer's axle, where that is told in place of one of the five places. */
  readonly ahead: number | undefined;
  /** Whose it is, who stands behind it, whether it is in stock, who fits it, what it touches. */
  readonly beside: Readonly<
    Record<'whose' | 'standsBehind' | 'stocked' | 'fittedBy' | 'touches', string>
  >;
  /** Its work in the rate book; '' for none. */
  readonly work: string;
};

/** On which line an accessory fits from one model year to another. */
type Fit = {
  readonly accessory: string;
  readonly line: string;
  readonly from: string;
  /** '' to this day. */
  readonly to: string;
  readonly because: string;
};

export type Accessories = {
  readonly accessories: readonly Accessory[];
  /** An accessory that has none fits every line. */
  readonly fits: readonly Fit[];
  readonly rates: RateBook;
  /** Each floor plan's line, and feet ahead of the axle by place. */
  readonly plans: ReadonlyMap<
    string,
    { readonly line: string; readonly at: ReadonlyMap<string, number> }
  >;
  readonly refused: readonly RefusedRow[];
  /** What of a row was not understood though the row itself was taken. */
  readonly notes: readonly RefusedRow[];
};

export type AccessoryFiles = {
  readonly 'accessories.csv'?: string;
  readonly 'accessory-fits.csv'?: string;
  readonly 'rates.csv'?: string;
  readonly 'floor-plans.csv'?: string;
};

export const accessoryColumns: Readonly<Record<string, Wanted>> = {
  id: { called: ['code', 'number', 'part number'], isNeeded: true },
  label: { called: ['name', 'accessory', 'what'], isNeeded: true },
  whose: { called: ['make', 'from whom'] },
  standsBehind: { called: ['warranty', 'stands behind it'] },
  stocked: { called: ['stock', 'in stock'], words: ['yes', 'no', 'order'] },
  fittedBy: { called: ['fitted by', 'installed by', 'who fits it'] },
  touches: { called: ['what it touches'] },
  weight: { called: ['weighs'], unit: 'lb', most: 2000, isNeeded: true },
  sits: { called: ['place', 'position', 'where it sits'], words: places },
  ahead: { called: ['ahead of axle', 'ahead of the axle'], unit: 'ft', least: -40, most: 40 },
  work: { called: ['labor', 'rate book'] },
};

export const fitColumns: Readonly<Record<string, Wanted>> = {
  accessory: { called: ['id'], isNeeded: true },
  line: { called: ['model line'], isNeeded: true },
  from: { called: ['from year', 'first'], unit: '', least: 1950, most: 2100, isNeeded: true },
  to: { called: ['to year', 'last'], unit: '', least: 1950, most: 2100 },
  because: { called: ['why', 'reason'] },
};

const isPlace = (text: string): text is Place => places.some((each) => each === text);

function plansIn(text: string): Accessories['plans'] {
  return new Map(
    readSheet('floor-plans.csv', text).rows.map(({ cells }) => {
      const at = places.flatMap((place) => {
        const feet = Number(cells[place] || NaN);
        return Number.isFinite(feet) ? [[place, feet] as const] : [];
      });
      return [cells.name ?? '', { line: cells.line ?? '', at: new Map(at) }];
    }),
  );
}

/** Accessories, where they fit and what fitting costs, from the files of a catalogue; any may be missing. */
export function readAccessories(files: AccessoryFiles, isOwn = false): Accessories {
  const read = readTable('accessories.csv', files['accessories.csv'] ?? '', accessoryColumns, 'id');
  const fitting = readTable('accessory-fits.csv', files['accessory-fits.csv'] ?? '', fitColumns);
  const rates = readRates(files['rates.csv'] ?? '', isOwn ? 'house' : 'invented');
  const refused: RefusedRow[] = [...read.refused, ...fitting.refused, ...rates.refused];
  const notes: RefusedRow[] = [];
  const refuse = (file: string, line: number, says: string): [] => {
    refused.push({ file, line, says });
    return [];
  };
  const accessories = read.rows.flatMap(({ line, texts, numbers }): Accessory[] => {
    const { id = '', label = '', sits = '', work = '' } = texts;
    const place = numbers.ahead !== undefined && sits === '' ? 'axle' : sits;
    if (work !== '' && !rates.rates.some((each) => each.work === work)) {
      const says = `“${work}” is no work of rates.csv; what fitting costs is not told.`;
      notes.push({ file: 'accessories.csv', line, says });
    }
    const { whose = '', standsBehind = '', stocked = '', fittedBy = '', touches = '' } = texts;
    return [
      {
        ...{
          id,
          label,
          work,
          sits: isPlace(place) ? place : undefined,
          ahead: numbers.ahead,
          weight: numbers.weight ?? 0,
        },
        beside: { whose, standsBehind, stocked, fittedBy, touches },
      },
    ];
  });
  const fits = fitting.rows.flatMap(({ line, texts, numbers }): Fit[] => {
    const { accessory = '', because = '' } = texts;
    if (!accessories.some(({ id }) => id === accessory)) {
      return refuse(
        'accessory-fits.csv',
        line,
        `“${accessory}” is no accessory of accessories.csv.`,
      );
    }
    const [from, to] = [numbers.from ?? 0, numbers.to];
    if (to !== undefined && to < from) {
      return refuse('accessory-fits.csv', line, `it ends in ${to}, before it begins in ${from}.`);
    }
    const own = (texts.line ?? '').toLowerCase();
    return [
      { accessory, line: own, from: `${from}`, to: to === undefined ? '' : `${to}`, because },
    ];
  });
  const plans = plansIn(files['floor-plans.csv'] ?? '');
  return {
    ...{ accessories, fits, rates, plans, notes },
    refused: refused.toSorted((a, b) => a.line - b.line),
  };
}

/** Pounds that an accessory adds; less than none where it takes off. */
export type Effect = {
  readonly trailer: number;
  readonly tongue: number;
  /** Of the payload that is used. */
  readonly payload: number;
};

function feetOf(trailer: Entry): number | undefined {
  const given = trailer.facts['trailer.ballToAxle'];
  const read = typeof given === 'string' ? readQuantity(given) : undefined;
  if (!read || wasMisread(read) || read.from !== read.to || !read.unit) return undefined;
  return convert(read.from, read.unit, unitOf('ft'));
}

/**
 * What it does to a trailer: levers about the axle.
 *
 *     ball ├──────── ballToAxle ────────┤ axle        tongue = weight × ahead / ballToAxle
 *                       weight ├─ ahead ─┤
 *
 * What sits on the hitch or in the vehicle is carried by the vehicle alone. Undefined where the
 * lever is not known.
 */
export function effectOf(
  { plans }: Accessories,
  { weight, sits, ahead }: Accessory,
  trailer: Entry,
): Effect | undefined {
  if (sits === 'hitch' || sits === 'vehicle') return { trailer: 0, tongue: 0, payload: weight };
  const at = ahead ?? (sits && plans.get(trailer.name)?.at.get(sits));
  const length = feetOf(trailer);
  if (at === undefined || length === undefined || length <= 0) return undefined;
  const tongue = (weight * at) / length;
  return { trailer: weight, tongue, payload: tongue };
}
