import { parseZone } from '../../db/index.ts';

/** The first halves of time zone names, as the IANA database has them; old ones that name a country alone are left out. */
const REGIONS = [
  'Africa',
  'America',
  'Antarctica',
  'Asia',
  'Atlantic',
  'Australia',
  'Europe',
  'Indian',
  'Pacific',
] as const;

/**
 * The time zones that something typed may mean: a full name, or the city alone in any spelling of capitals and spaces.
 *
 * @example
 * zonesNamed('new york'); // ['America/New_York']
 */
export function zonesNamed(text: string): readonly string[] {
  const wanted = text.trim().replaceAll(/\s+/g, '_');
  if (wanted.includes('/') || /^utc$/i.test(wanted)) {
    const zone = parseZone(wanted);
    return zone ? [zone] : [];
  }
  return REGIONS.flatMap((region) => parseZone(`${region}/${wanted}`) ?? []);
}
