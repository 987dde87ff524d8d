import type { RefusedRow } from './sheet';
import { readTable, type Wanted } from './table';

/** What a line of trailers has as an option, from one model year to another. */
type Offer = {
  readonly line: string;
  readonly option: string;
  readonly as: 'standard' | 'optional';
  readonly from: string;
  /** '' to the last year there is. */
  readonly to: string;
  /** Why it changed in its first year; '' where nobody wrote it down. */
  readonly because: string;
};

export type Offers = {
  readonly offers: readonly Offer[];
  /** Options by id, as a person calls them. */
  readonly options: ReadonlyMap<string, string>;
  readonly lines: readonly string[];
  /** The first and the last model year. */
  readonly years: readonly [first: string, last: string];
  /** What was not taken, each with the file, the line and the reason. */
  readonly refused: readonly RefusedRow[];
};

export type OfferFiles = {
  readonly 'offers.csv': string;
  readonly 'options.csv': string;
  readonly 'floor-plans.csv': string;
};

const year: Wanted = { unit: '', least: 1950, most: 2100 };

export const offerColumns: Readonly<Record<string, Wanted>> = {
  line: { called: ['model line'], isNeeded: true },
  option: { called: ['option code', 'code'], isNeeded: true },
  as: { called: ['offered as', 'how'], words: ['standard', 'optional'], isNeeded: true },
  from: { ...year, called: ['from year', 'first year'], isNeeded: true },
  to: { ...year, called: ['to year', 'last year'] },
  because: { called: ['why', 'reason'] },
};
export const optionColumns: Readonly<Record<string, Wanted>> = {
  id: { called: ['code'], isNeeded: true },
  name: { called: ['label', 'option'] },
};
/** Of a floor plan its years are read here; the rest with the accessories, which sit at its places. */
export const planColumns: Readonly<Record<string, Wanted>> = {
  ...{ id: {}, name: {}, line: {}, first: year, last: year },
  ...{ nose: {}, front: {}, axle: {}, rear: {}, tail: {} },
};

const written = (years: number | undefined): string => (years === undefined ? '' : `${years}`);

/** What is offered on which line in which years, from the files of a catalogue. */
export function readOffers(files: OfferFiles): Offers {
  const read = (file: keyof OfferFiles, columns: Readonly<Record<string, Wanted>>) =>
    readTable(file, files[file], columns);
  const [rows, named, plans] = [
    read('offers.csv', offerColumns),
    read('options.csv', optionColumns),
    read('floor-plans.csv', planColumns),
  ];
  const offers = rows.rows.map(({ texts, numbers }): Offer => {
    const { line = '', option = '', because = '' } = texts;
    const as = texts.as === 'standard' ? 'standard' : 'optional';
    return {
      line: line.toLowerCase(),
      option,
      as,
      from: written(numbers.from),
      to: written(numbers.to),
      because,
    };
  });
  /** What nobody gave a name is called by its id. */
  const options = new Map([
    ...offers.map(({ option }) => [option, option] as const),
    ...named.rows.map(({ texts: { id = '', name = id } }) => [id, name] as const),
  ]);
  const years = [
    ...plans.rows.flatMap(({ numbers: { first, last } }) => [written(first), written(last)]),
    ...offers.map(({ from }) => from),
  ]
    .filter((each) => each !== '')
    .toSorted();
  const refused = [...rows.refused, ...named.refused, ...plans.refused];
  const lines = [...new Set(offers.map(({ line }) => line))];
  return { offers, options, lines, years: [years[0] ?? '', years.at(-1) ?? ''], refused };
}

const capital = (word: string): string => `${word.charAt(0).toUpperCase()}${word.slice(1)}`;

/** By what stands before “for a washer”, “in the garage”. */
const isMany = (name: string): boolean =>
  /s$/.test(name.split(/ (?:for|in|of|on|under|with) /)[0] ?? name);

/** “heated tanks”, “the inverter”, “the 50-ampere service”, “the TV mount” */
const called = (name: string): string => {
  const low = /^\p{Lu}\p{Lu}/u.test(name)
    ? name
    : `${name.charAt(0).toLowerCase()}${name.slice(1)}`;
  return isMany(name) ? low : `the ${low}`;
};

/** “from 2026 on”, “until 2025”, “2024 to 2025”, “in every year”. */
function span({ years: [first, last] }: Offers, { from, to }: Offer): string {
  const [begins, ends] = [from <= first, to === '' || to >= last];
  if (begins && ends) return 'in every model year';
  if (ends) return `from model year ${from} on`;
  if (begins) return `until model year ${to}`;
  return from === to ? `in model year ${from}` : `in model years ${from} to ${to}`;
}

const inOrder = ({ offers }: Offers, line: string, option: string): readonly Offer[] =>
  offers
    .filter((each) => each.line === line && each.option === option)
    .toSorted((a, b) => a.from.localeCompare(b.from));

/** “Heated tanks: on all of that line?” in one sentence, with the year and the reason. */
export function offerSaid(offers: Offers, line: string, option: string): string {
  const name = offers.options.get(option) ?? option;
  const found = inOrder(offers, line, option);
  const whole = capital(line);
  const verb = isMany(name) ? 'are' : 'is';
  if (found.length === 0)
    return `No: ${called(name)} ${verb} not offered on the ${whole} line in any year.`;
  const standard = found.filter(({ as }) => as === 'standard');
  const optional = found.filter(({ as }) => as === 'optional');
  const [first] = standard;
  const because = found.find((each) => each.because !== '' && each.from > offers.years[0]);
  const why = because ? `, because ${because.because}` : '';
  const ordered = optional.map((each) => span(offers, each)).join(' and ');
  if (!first) {
    return `Not on all: on the ${whole} line ${called(name)} ${verb} an extra to be ordered ${ordered}${why}.`;
  }
  const always = span(offers, first) === 'in every model year';
  if (always)
    return `Yes: on the ${whole} line ${called(name)} ${verb} standard in every model year.`;
  const rest = ordered === '' ? '' : `; ${ordered} only where ordered`;
  return `Not on all: on the ${whole} line ${called(name)} ${verb} standard ${span(offers, first)}${why}${rest}.`;
}

export type OfferChange = {
  readonly year: string;
  readonly line: string;
  readonly says: string;
  readonly because: string;
};

/** What changed on the lines, the latest year first, and why where somebody wrote it down. */
export function offerChanges(offers: Offers): readonly OfferChange[] {
  const [first, last] = offers.years;
  const next = (year: string): string => `${Number(year) + 1}`;
  return offers.offers
    .flatMap((offer): OfferChange[] => {
      const { line, option, as, from, to, because } = offer;
      const name = offers.options.get(option) ?? option;
      const all = inOrder(offers, line, option);
      const changed = (year: string, says: string): OfferChange => ({ year, line, says, because });
      const begins = all.find((each) => each.to !== '' && next(each.to) === from);
      const goesOn = to === '' || all.some((each) => each.from === next(to));
      return [
        ...(from > first
          ? [
              changed(
                from,
                begins
                  ? `${name}: ${as === 'standard' ? 'now standard' : 'now an extra'}`
                  : `${name}: new, ${as === 'standard' ? 'standard' : 'an extra'}`,
              ),
            ]
          : []),
        ...(!goesOn && to < last
          ? [{ ...changed(next(to), `${name}: no longer offered`), because: '' }]
          : []),
      ];
    })
    .toSorted((a, b) => b.year.localeCompare(a.year) || a.line.localeCompare(b.line));
}

/** The option or the line that is meant by what somebody wrote. */
export function optionMeant({ options }: Offers, said: string): string | undefined {
  const wanted = said.trim().toLowerCase();
  return [...options].find(([id, name]) => id === wanted || name.toLowerCase() === wanted)?.[0];
}
