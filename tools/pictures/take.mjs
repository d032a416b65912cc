// A picture of every page at the three sizes people have: a laptop, a desk screen, a phone. What a page complains of and what sticks out of its window is said.
import { chromium } from 'playwright-core';
import { join } from 'node:path';

const [, , address, folder, ...wanted] = process.argv;
const house = 'heron-point';
const sizes = [[1366, 768], [1920, 1080], [390, 844]];
/** A picture of a page on a phone ends here, px. */
const tallest = 3400;
const stress = async (page) => {
  await page.getByRole('button', { name: 'Stress', exact: true }).click();
  await page.locator('svg.stress .band').first().waitFor({ state: 'attached', timeout: 120_000 });
};
const water = async (page) => {
  await page.getByRole('button', { name: 'Water', exact: true }).click();
  const day = page.locator('.day .tape');
  await day.waitFor({ timeout: 120_000 });
  await day.fill('5');
};
const arrived = async (page) => {
  await page.locator('[name=came-width]').fill('3 ft');
  await page.locator('[name=came-height]').fill('3 ft 8 in');
  await page.locator('[name=came-height]').press('Enter');
  await page.locator('.way-card').nth(2).waitFor({ timeout: 120_000 });
};
// Sheets come as one reads on: those that the picture reaches are asked for at once.
const sheets = (page) =>
  page.evaluate((reach) => {
    const seen = [...document.querySelectorAll('img')].filter((img) => img.getBoundingClientRect().top < reach);
    for (const img of seen) img.loading = 'eager';
    return Promise.all(seen.map((img) => img.decode()));
  }, tallest);
const seasons = (page) => page.locator('.band').first().waitFor({ state: 'attached', timeout: 120_000 });
const pages = [
  ['start', '/'],
  ['greeting', `/wall/${house}?greet`],
  ['ground', `/ground/${house}`],
  ['earth', `/earth/${house}`],
  ['wall', `/wall/${house}`],
  ['wall-stress', `/wall/${house}`, stress],
  ['wall-water', `/wall/${house}`, water],
  ['round', `/round/${house}`, (page) => page.waitForTimeout(3000)],
  ['roof', `/roof/${house}`],
  ['days', `/days/${house}`, seasons],
  ['comfort', `/comfort/${house}`],
  ['papers', `/papers/${house}`, sheets],
  ['sheet', `/sheet/${house}?of=lift-1`],
  ['record', `/record/${house}`],
  ['today', `/today/${house}`],
  ['phones', `/phones/${house}`],
  ['arrived', `/arrived/${house}?of=tub-window`, arrived],
  ['trouble', '/wall/no-such-house'],
];

const browser = await chromium.launch({
  executablePath: process.env.CLOM_CHROMIUM ?? '/usr/bin/chromium',
  args: ['--no-sandbox', '--disable-quic', '--no-first-run', '--disable-background-networking', '--disable-component-update', '--disable-sync', '--use-gl=angle', '--use-angle=swiftshader', '--enable-unsafe-swiftshader'],
});
for (const [name, path, act] of pages.filter(([name]) => wanted.length === 0 || wanted.includes(name))) {
  for (const [width, height] of sizes) {
    const page = await browser.newPage({ viewport: { width, height }, reducedMotion: 'reduce' });
    const complaints = [];
    page.on('console', (message) => message.type() === 'error' && complaints.push(message.text()));
    page.on('pageerror', (error) => complaints.push(String(error)));
    try {
      await page.goto(address + path);
      await page.locator('clom-workbench[data-ready], body[data-ready]').first().waitFor({ timeout: 120_000 });
      await act?.(page);
      await page.waitForTimeout(400);
      const out = await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);
      if (out > 0) complaints.push(`${out} px stick out to the side`);
      const tall = await page.evaluate(() => document.documentElement.scrollHeight);
      await page.screenshot({ path: join(folder, `${name}-${width}.jpg`), type: 'jpeg', quality: 68, ...(width < 600 ? { fullPage: true, clip: { x: 0, y: 0, width, height: Math.min(tall, tallest) } } : {}) });
      // The sheet alone, as it comes out of the printer, for README.md.
      if (name === 'sheet' && width === 1366) await page.locator('.print-sheet svg').first().screenshot({ path: join(folder, 'lift-sheet.jpg'), type: 'jpeg', quality: 80 });
    } catch (error) {
      complaints.push(String(error).split('\n')[0]);
    }
    console.log(`${name} ${width}x${height}${complaints.map((c) => `\n  ! ${c}`).join('')}`);
    await page.close();
  }
}
await browser.close();
