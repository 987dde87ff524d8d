import { readSheet } from './sheet';

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
};

export type OfferFiles = {
  readonly 'offers.csv': string;
  readonly 'options.csv': string;
  readonly 'floor-plans.csv': string;
};

const rowsIn = (file: keyof OfferFiles, files: OfferFiles) =>
  readSheet(file, files[file]).rows.map(({ cells }) => cells);

/** What is offered on which line in which years, from the files of a catalogue. */
export function readOffers(files: OfferFiles): Offers {
  const offers = rowsIn('offers.csv', files).flatMap((cells): Offer[] => {
    const { line = '', option = '', as = '', from = '', to = '', because = '' } = cells;
    if (line === '' || option === '' || (as !== 'standard' && as !== 'optional')) return [];
    return [{ line, option, as, from, to, because }];
  });
  const options = new Map(
    rowsIn('options.csv', files).map(({ id = '', name = '' }) => [id, name || id] as const),
  );
  const plans = rowsIn('floor-plans.csv', files);
  const years = [
    ...plans.flatMap(({ first = '', last = '' }) => [first, last]),
    ...offers.map(({ from }) => from),
  ]
    .filter((year) => /^\d{4}$/.test(year))
    .toSorted();
  const lines = [...new Set(offers.map(({ line }) => line))];
  return { offers, options, lines, years: [years[0] ?? '', years.at(-1) ?? ''] };
}

const capital = (word: string): string => `${word.charAt(0).toUpperCase()}${word.slice(1)}`;

const low = (word: string): string => `${word.charAt(0).toLowerCase()}${word.slice(1)}`;

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
  if (found.length === 0)
    return `No: ${low(name)} are not offered on the ${whole} line in any year.`.replace(
      /(?<!s) are/,
      ' is',
    );
  const verb = name.endsWith('s') ? 'are' : 'is';
  const standard = found.filter(({ as }) => as === 'standard');
  const optional = found.filter(({ as }) => as === 'optional');
  const [first] = standard;
  const because = found.find((each) => each.because !== '' && each.from > offers.years[0]);
  const why = because ? `, because ${because.because}` : '';
  const ordered = optional.map((each) => span(offers, each)).join(' and ');
  if (!first) {
    return `Not on all: on the ${whole} line ${low(name)} ${verb} an extra to be ordered ${ordered}${why}.`;
  }
  const always = span(offers, first) === 'in every model year';
  if (always) return `Yes: on the ${whole} line ${low(name)} ${verb} standard in every model year.`;
  const rest = ordered === '' ? '' : `; ${ordered} only where ordered`;
  return `Not on all: on the ${whole} line ${low(name)} ${verb} standard ${span(offers, first)}${why}${rest}.`;
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
