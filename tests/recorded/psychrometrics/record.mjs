// Writes climate-psychrometrics-recorded.csv: moist air by the library psychrolib (MIT), which follows the ASHRAE Handbook,
// Fundamentals (2017), chapter 1. Run: npm install --no-package-lock && node record.mjs
import { writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import psychrolib from 'psychrolib';

psychrolib.SetUnitSystem(psychrolib.SI);
const lines = [
  '# source: psychrolib 1.1.1 (MIT), general-purpose psychrometric library after the ASHRAE Handbook, Fundamentals (2017), chapter 1; run by tests/recorded/psychrometrics/record.mjs',
  '# locator: GetSatVapPres, GetHumRatioFromRelHum, GetMoistAirEnthalpy, GetMoistAirVolume, GetTDewPointFromRelHum, GetTWetBulbFromRelHum',
  '# unit: degrees Celsius; percent; kPa; kg/kg; kJ/kg dry air; m3/kg dry air',
  '# basis: recorded from an independent implementation',
  '# tolerance: 0.15 % for saturation pressure (the Tetens form against the Hyland and Wexler form); 0.25 % for what follows from it, since 0.622 stands for 0.621945; 0.05 K for dew point and 0.1 K for thermodynamic wet bulb',
  'celsius,relativeHumidity,pressure,saturationPressure,humidityRatio,enthalpy,volume,dewPoint,wetBulb',
];
for (const pressure of [101.325, 99.9, 84.5]) {
  for (const celsius of [1, 5, 10, 15, 20, 25, 30, 35, 40, 45]) {
    for (const humidity of [40, 60, 80, 95]) {
      const pascal = pressure * 1000;
      const share = humidity / 100;
      const ratio = psychrolib.GetHumRatioFromRelHum(celsius, share, pascal);
      lines.push([celsius, humidity, pressure,
        (psychrolib.GetSatVapPres(celsius) / 1000).toFixed(6),
        ratio.toFixed(8),
        (psychrolib.GetMoistAirEnthalpy(celsius, ratio) / 1000).toFixed(4),
        psychrolib.GetMoistAirVolume(celsius, ratio, pascal).toFixed(6),
        psychrolib.GetTDewPointFromRelHum(celsius, share).toFixed(4),
        psychrolib.GetTWetBulbFromRelHum(celsius, share, pascal).toFixed(4)].join(','));
    }
  }
}
const target = new URL('../../FarmTwin.Farm.Tests/Published/climate-psychrometrics-recorded.csv', import.meta.url);
writeFileSync(fileURLToPath(target), lines.join('\n') + '\n');
