import loadsText from '../../../seeds/loads.csv?raw';
import trailersText from '../../../seeds/trailers.csv?raw';
import vehiclesText from '../../../seeds/vehicles.csv?raw';

/** The invented catalogue, as it stands where there is none of one's own. */
export const inventedFiles = {
  'vehicles.csv': vehiclesText,
  'trailers.csv': trailersText,
  'loads.csv': loadsText,
} as const;
