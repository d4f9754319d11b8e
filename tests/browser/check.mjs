// Opens pages in a real browser: node check.mjs PAGE.html ...
// axe finds no violation, html-validate no error, and on A4 and Letter no figure is higher than a sheet or wider than its text.
// The last line is "N passed, N failed". CHROMIUM names the browser; /usr/bin/chromium when left out.
import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { basename, dirname, resolve } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { chromium } from 'playwright-core';
import { FileSystemConfigLoader, HtmlValidate } from 'html-validate';

const axe = await readFile(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
const rules = JSON.parse(await readFile(resolve(dirname(fileURLToPath(import.meta.url)), '.htmlvalidate.json'), 'utf8'));
const validator = new HtmlValidate(new FileSystemConfigLoader(rules));

// Text area of a sheet in CSS pixels (96 to the inch), with the margins of the style sheet: 15, 14 and 16 mm.
const millimetre = 96 / 25.4;
const sheets = {
  A4: { width: (210 - 28) * millimetre, height: (297 - 31) * millimetre },
  Letter: { width: 215.9 * millimetre - 28 * millimetre, height: 279.4 * millimetre - 31 * millimetre },
};

let passed = 0;
let failed = 0;
function judge(what, problems) {
  if (problems.length === 0) {
    passed++;
    console.log(`ok    ${what}`);
  } else {
    failed++;
    console.log(`FAILS ${what}`);
    for (const problem of problems.slice(0, 20)) console.log(`      ${problem}`);
  }
}

const browser = await chromium.launch({ executablePath: process.env.CHROMIUM ?? '/usr/bin/chromium', args: ['--no-sandbox', '--disable-gpu'] });
for (const file of process.argv.slice(2)) {
  const name = `${basename(dirname(resolve(file)))}/${basename(file)}`;
  const text = await readFile(file, 'utf8');
  const report = await validator.validateString(text, file);
  judge(`${name}: valid HTML`, report.results.flatMap(r => r.messages.filter(m => m.severity === 2).map(m => `line ${m.line}: ${m.ruleId}: ${m.message}`)));

  const page = await browser.newPage();
  const asked = [];
  page.on('request', request => { if (!request.url().startsWith('file:')) asked.push(request.url()); });
  await page.goto(pathToFileURL(resolve(file)).href);
  judge(`${name}: opens without a network`, asked);

  await page.evaluate(axe);
  const found = await page.evaluate(() => window.axe.run(document));
  judge(`${name}: nothing that axe objects to`, found.violations.map(v => `${v.id}: ${v.help}: ${v.nodes.slice(0, 3).map(n => n.html.slice(0, 120)).join(' | ')}`));

  await page.emulateMedia({ media: 'print' });
  for (const [sheet, size] of Object.entries(sheets)) {
    await page.setViewportSize({ width: Math.floor(size.width), height: Math.floor(size.height) });
    const broken = await page.evaluate(({ width, height }) => [...document.querySelectorAll('figure')].flatMap(figure => {
      const box = figure.getBoundingClientRect();
      const drawn = figure.querySelector('svg').getBoundingClientRect();
      const words = figure.textContent.trim().slice(0, 60);
      const problems = [];
      if (getComputedStyle(figure).breakInside !== 'avoid') problems.push(`may be broken over sheets: ${words}`);
      if (box.height > height) problems.push(`${Math.round(box.height)} px high, the sheet ${Math.round(height)}: ${words}`);
      if (drawn.right > width + 1) problems.push(`cut at the right edge: ${words}`);
      return problems;
    }), size);
    const pdf = await page.pdf({ format: sheet, preferCSSPageSize: false });
    if (pdf.length < 1000) broken.push('the PDF is empty');
    judge(`${name}: prints on ${sheet} with every figure whole`, broken);
  }
  await page.close();
}

await browser.close();
console.log(`${passed} passed, ${failed} failed`);
process.exit(failed === 0 && passed > 0 ? 0 : 1);
