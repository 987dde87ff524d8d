import { bring } from '../formula/brought';
import { catalogued, withBuilds } from '../formula/catalogued';
import { catalogueLists, catalogueRankings, namedAgainst } from './catalogued';
import { bringListed } from './listed';
import { modelByModel } from './model-by-model';

/** Data with a catalogue; the code that reckons with catalogues comes along. */
export function bringingCatalogues<T>(data: T): T {
  bring({ catalogued, withBuilds });
  bringListed({
    lists: catalogueLists,
    rankings: catalogueRankings,
    against: namedAgainst,
    byModel: modelByModel,
  });
  return data;
}
