// Drags the middle opening of a house to and fro and measures what a person would feel:
//   frames:    time between animation frames while the pointer moves, 600 moves, one a frame
//   handle:    from a pointer event to the frame in which the opening has moved
//   findings:  from a pointer event to the frame after the page has redrawn piers, findings and amounts from the answer to it, or to a newer one
// Times are taken inside the page; the answer is seen on the line itself. Nothing here fails on a slow machine: it only tells.
import { askedAgain, heading, moved, opened, redrawn, row, wayOf, weight } from './listening.mjs';

const [, , address] = process.argv;
const moves = 600;

const { browser, page } = await opened(address, 'svg.unrolled .opening');

const start = await page.evaluate(() => {
  const all = [...document.querySelectorAll('svg.unrolled .opening:not(.door)')];
  const held = all[Math.floor(all.length / 2)];
  const box = held.querySelector('.leaf').getBoundingClientRect();
  const log = Object.assign(window.log, { frames: [], handle: [] });
  let last = 0;
  let waiting = null;
  addEventListener('pointermove', (event) => {
    log.events.push(event.timeStamp);
    waiting ??= event.timeStamp;
  }, { capture: true });
  const frame = (now) => {
    if (log.going) {
      if (last) log.frames.push(now - last);
      last = now;
      if (waiting !== null) log.handle.push(performance.now() - waiting);
      waiting = null;
    } else last = 0;
    requestAnimationFrame(frame);
  };
  requestAnimationFrame(frame);
  return { name: held.dataset.opening, x: box.x + box.width / 2, y: box.y + box.height / 2 };
});

const steadyWait = await page.evaluate(
  () => new Promise((done) => {
    const gaps = [];
    let last = 0;
    const frame = (now) => {
      if (last) gaps.push(now - last);
      last = now;
      gaps.length < 120 ? requestAnimationFrame(frame) : done(gaps);
    };
    requestAnimationFrame(frame);
  }),
);

await page.mouse.move(start.x, start.y);
await page.mouse.down();
await page.evaluate(() => (window.log.going = true));
const took = await moved(page, moves, (share) => [start.x + 90 * Math.sin(share * Math.PI * 6), start.y + 24 * Math.sin(share * Math.PI * 10)]);
await page.evaluate(() => (window.log.going = false));
await page.mouse.up();
await page.waitForTimeout(800);

const log = await page.evaluate(() => {
  const { events, answered, bytes, frames, handle } = window.log;
  return { events, answered, bytes, frames, handle };
});
await browser.close();

heading(`${address}: ${start.name}, ${moves} moves asked for in ${(took / 1000).toFixed(1)} s`);
row('between frames, at rest', steadyWait);
row('between frames, dragging', log.frames);
row('event to frame with handle moved', log.handle);
row('event to findings redrawn', redrawn(log));
const [away, drawing] = wayOf(log);
row('  of it: asked to answered', away);
row('  of it: answered to redrawn', drawing);
row('answered to the next asked', askedAgain(log));
console.log(`${log.events.length} pointer events, ${log.answered.length} answers, ${weight(log.bytes)}`);
