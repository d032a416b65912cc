// Drags the middle opening of a house to and fro on the sheet of stress and measures what a person would feel:
//   frames:    time between animation frames while the pointer moves, one move a frame
//   findings:  from a pointer event to the frame after the page has redrawn from the answer to it, or to a newer one
//   stress:    from a pointer event to the frame after which the page shows the stress of a house in which that move, or a newer one, is made (listening.mjs says when a move is)
//   envelope:  from the last move, the opening still held, to the frame after the hardest of all cases is drawn again
// Nothing here fails on a slow machine: it only tells.
import { heading, moved, opened, pictured, redrawn, row, wayOf, weight } from './listening.mjs';

const [, , address] = process.argv;
const moves = 600;

const { browser, page } = await opened(address, 'svg.unrolled .opening');
await page.getByRole('button', { name: 'Stress', exact: true }).click();
await page.locator('svg.stress .band').first().waitFor({ state: 'attached', timeout: 120_000 });
await page.waitForTimeout(500);

const start = await page.evaluate(() => {
  const all = [...document.querySelectorAll('svg.unrolled .opening:not(.door)')];
  const held = all[Math.floor(all.length / 2)];
  const box = held.querySelector('.leaf').getBoundingClientRect();
  const log = Object.assign(window.log, { frames: [] });
  let last = 0;
  addEventListener('pointermove', (event) => log.events.push(event.timeStamp), { capture: true });
  const frame = (now) => {
    if (log.going) {
      if (last) log.frames.push(now - last);
      last = now;
    } else last = 0;
    requestAnimationFrame(frame);
  };
  requestAnimationFrame(frame);
  return { name: held.dataset.opening, x: box.x + box.width / 2, y: box.y + box.height / 2 };
});

await page.mouse.move(start.x, start.y);
await page.mouse.down();
const first = page.evaluate(() => new Promise((done) => {
  const look = () => (document.querySelector('.on-the-way') ? done() : requestAnimationFrame(look));
  requestAnimationFrame(look);
}));
await page.mouse.move(start.x + 8, start.y);
await first;
await page.waitForTimeout(1500);
await page.evaluate(() => {
  window.log.events.length = window.log.answered.length = window.log.pictureBytes.length = 0;
  window.log.going = true;
});
const took = await moved(page, moves, (share) => [start.x + 14 * Math.sin(share * Math.PI * 6), start.y]);
await page.evaluate(() => (window.log.going = false));
// Looked for in every frame: what drives the browser asks less and less often, at last every half second.
const envelope = await page.evaluate(() => new Promise((done) => {
  const look = () => (document.querySelector('.on-the-way') ? requestAnimationFrame(look) : done(performance.now() - window.log.events.at(-1)));
  requestAnimationFrame(look);
}));
await page.mouse.up();

const log = await page.evaluate(() => {
  const { events, answered, bytes, frames, pictures, pictureBytes } = window.log;
  return { events, answered, bytes, frames, pictures, pictureBytes };
});
await browser.close();

heading(`${address}: ${start.name} on the sheet of stress, ${moves} moves asked for in ${(took / 1000).toFixed(1)} s`);
row('between frames, dragging', log.frames);
row('event to findings redrawn', redrawn(log));
const [away, drawing] = wayOf(log);
row('  of it: asked to answered', away);
row('  of it: answered to redrawn', drawing);
row('event to stress redrawn', pictured(log));
row('last move to the hardest of all', [envelope]);
console.log(`${log.events.length} pointer events, ${log.answered.length} answers, ${weight(log.bytes)}; ${log.pictureBytes.length} pictures, ${weight(log.pictureBytes)}`);
