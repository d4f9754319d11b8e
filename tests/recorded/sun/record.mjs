// Writes climate-sun-recorded.csv: sunrise, sunset and altitude of the sun by the library astronomy-engine (MIT), which
// follows the VSOP87 theory to better than an arc minute. Run: npm install --no-package-lock && node record.mjs
import { writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import * as Astronomy from 'astronomy-engine';

const sites = [
  { latitude: 40.1, longitude: -76.3, zone: -5 },
  { latitude: -0.3, longitude: 36.1, zone: 3 },
  { latitude: -34.9, longitude: 138.6, zone: 9.5 },
  { latitude: 60.2, longitude: 24.9, zone: 2 },
];
const year = 2025;
const altitudeHour = 10.5;
const lines = [
  '# source: astronomy-engine 2.1.19 (MIT), general-purpose astronomy library, run by tests/recorded/sun/record.mjs',
  '# locator: SearchRiseSet (upper limb, refraction 34 arc minutes) and Horizon without refraction at 10:30 local standard time; year 2025, day 15 of each month',
  '# unit: degrees north and east; hours of local standard time; degrees',
  '# basis: recorded from an independent implementation',
  '# tolerance: 2 min for sunrise and sunset, 3 min above 55 degrees where the sun grazes the horizon; 0.5 degrees for altitude; the tested formula takes day numbers without the year, up to 0.4 day off the calendar',
  'latitude,longitudeEast,zone,dayOfYear,sunrise,sunset,altitudeHour,altitude',
];
for (const site of sites) {
  const observer = new Astronomy.Observer(site.latitude, site.longitude, 0);
  for (let month = 0; month < 12; month++) {
    const midnight = new Date(Date.UTC(year, month, 15) - site.zone * 3600e3);
    const hours = (time) => (time.date - midnight) / 3600e3;
    const rise = Astronomy.SearchRiseSet(Astronomy.Body.Sun, observer, +1, midnight, 1);
    const set = Astronomy.SearchRiseSet(Astronomy.Body.Sun, observer, -1, midnight, 1);
    const moment = new Date(midnight.getTime() + altitudeHour * 3600e3);
    const place = Astronomy.Equator(Astronomy.Body.Sun, moment, observer, true, true);
    const horizon = Astronomy.Horizon(moment, observer, place.ra, place.dec, '');
    const dayOfYear = Math.round((Date.UTC(year, month, 15) - Date.UTC(year, 0, 1)) / 86400e3) + 1;
    lines.push([site.latitude, site.longitude, site.zone, dayOfYear, hours(rise).toFixed(4), hours(set).toFixed(4),
      altitudeHour, horizon.altitude.toFixed(3)].join(','));
  }
}
const target = new URL('../../FarmTwin.Farm.Tests/Published/climate-sun-recorded.csv', import.meta.url);
writeFileSync(fileURLToPath(target), lines.join('\n') + '\n');
