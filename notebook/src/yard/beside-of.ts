import { isRows } from '@tarebook/rules/engine';
import { readAccessories, readCatalogue, readOffers } from '@tarebook/sweep';
import accessoriesText from '../../../seeds/accessories.csv?raw';
import fitsText from '../../../seeds/accessory-fits.csv?raw';
import plansText from '../../../seeds/floor-plans.csv?raw';
import offersText from '../../../seeds/offers.csv?raw';
import optionsText from '../../../seeds/options.csv?raw';
import ratesText from '../../../seeds/rates.csv?raw';
import type { LoadRow } from '../state/loads';
import type { OwnTexts } from '../state/own-catalogue';
import type { Beside } from './asked';
import { inventedFiles } from './invented';

/** Loads of one's own, row by row, as a list of the page has them. */
function loadRows(text: string): readonly LoadRow[] {
  return readCatalogue({ 'loads.csv': text }).loads.flatMap(({ name, facts }) =>
    Object.entries(facts).flatMap(([list, rows]) =>
      isRows(rows)
        ? rows.map(({ label = '', weight = '', ahead = '' }) => ({
            ...{ name, list, label: `${label}` },
            ...{ weight: `${weight}`, ahead: `${ahead}` },
          }))
        : [],
    ),
  );
}

/**
 * What stands beside vehicles and trailers. To accessories of one's own no invented price is told, and
 * to offers of one's own no invented name: what goes with them is one's own or is not there.
 */
export function besideOf(files: OwnTexts | undefined): Beside {
  const isOwn = (name: keyof OwnTexts): boolean => files?.[name] !== undefined;
  const has = { accessories: isOwn('accessories.csv'), offers: isOwn('offers.csv') };
  const text = (name: keyof OwnTexts, invented: string, isAlone = false): string =>
    files?.[name] ?? (isAlone ? '' : invented);
  const accessories = readAccessories(
    {
      'accessories.csv': text('accessories.csv', accessoriesText),
      'accessory-fits.csv': text('accessory-fits.csv', fitsText, has.accessories),
      'rates.csv': text('rates.csv', ratesText, has.accessories),
      'floor-plans.csv': text('floor-plans.csv', plansText),
    },
    isOwn('rates.csv'),
  );
  const offers = readOffers({
    'offers.csv': text('offers.csv', offersText),
    'options.csv': text('options.csv', optionsText, has.offers),
    'floor-plans.csv': text('floor-plans.csv', plansText, has.offers),
  });
  const { trailers } = readCatalogue({
    'trailers.csv': text('trailers.csv', inventedFiles['trailers.csv']),
  });
  const loads = files?.['loads.csv'];
  return {
    ...{ accessories, offers, trailers },
    loads: loads === undefined ? undefined : loadRows(loads),
    isOwn: { ...has, rates: isOwn('rates.csv') },
  };
}
