// Turns the knobs of a roof and measures what a person would feel:
//   a step:   from a key pressed on a knob's tape to the frame after plan, section, states and findings are redrawn, 200 steps, each after the one before is seen
//   a pull:   the same from each move of the pointer while a tape is pulled to and fro, 200 moves, one a frame; a newer answer counts for an older move
// Times are taken inside the page; the answer is seen on the line itself. Nothing here fails on a slow machine: it only tells.
import { heading, moved, opened, redrawn, row, weight } from './listening.mjs';

const [, , address] = process.argv;
const steps = 200;

const { browser, page } = await opened(address, 'knob-board .tape');
await page.evaluate(() => {
  for (const kind of ['keydown', 'pointermove']) addEventListener(kind, (event) => window.log.going && window.log.events.push(event.timeStamp), { capture: true });
});

const begin = () => page.evaluate(() => Object.assign(window.log, { events: [], answered: [], bytes: [], going: true }));
const tell = async (name) => {
  await page.waitForTimeout(800);
  const log = await page.evaluate(() => {
    window.log.going = false;
    const { events, answered, bytes } = window.log;
    return { events, answered, bytes };
  });
  row(name, redrawn(log), `${log.answered.length} answers, ${weight(log.bytes)}`);
};

heading(address);
for (const knob of ['soil', 'eave']) {
  const tape = page.locator(`[data-knob=${knob}] .tape`);
  if ((await tape.count()) === 0) continue;
  await tape.focus();
  await begin();
  for (let i = 1; i <= steps; i++) {
    await page.keyboard.press(Math.floor(i / 10) % 2 === 0 ? 'ArrowRight' : 'ArrowLeft');
    await page.evaluate((n) => new Promise((done) => {
      const look = () => (window.log.answered.length >= n ? done() : setTimeout(look, 4));
      setTimeout(done, 3000);
      look();
    }), i);
  }
  await tell(`${knob}: key to all redrawn`);
  const box = await tape.boundingBox();
  const value = await tape.evaluate((el) => (el.value - el.min) / (el.max - el.min));
  const at = box.x + 6.5 + value * (box.width - 13);
  await page.mouse.move(at, box.y + box.height / 2);
  await page.mouse.down();
  await begin();
  await moved(page, steps, (share) => [at + 60 * Math.sin(share * Math.PI * 4), box.y + box.height / 2]);
  await page.mouse.up();
  await tell(`${knob}: pull to all redrawn`);
}
await browser.close();
