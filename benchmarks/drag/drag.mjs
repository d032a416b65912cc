// Drags the middle opening of a house to and fro and measures what a person would feel:
//   frames:    time between animation frames while the pointer moves, 600 moves, one a frame
//   handle:    from a pointer event to the frame in which the opening has moved
//   findings:  from a pointer event to the frame after the page has redrawn piers, findings and amounts from the answer to it, or to a newer one
// Times are taken inside the page; the answer is seen on the line itself. Nothing here fails on a slow machine: it only tells.
import { chromium } from 'playwright-core';
import { cpus, loadavg } from 'node:os';

const [, , address] = process.argv;
const moves = 600;

const browser = await chromium.launch({
  executablePath: process.env.CLOM_CHROMIUM ?? '/usr/bin/chromium',
  args: ['--no-sandbox', '--disable-gpu', '--disable-quic', '--no-first-run', '--disable-background-networking', '--disable-component-update', '--disable-sync'],
});
const page = await browser.newPage({ viewport: { width: 1366, height: 768 } });
await page.addInitScript(() => {
  const log = { events: [], sent: new Map(), answered: [], bytes: [], frames: [], handle: [] };
  window.dragLog = log;
  const send = WebSocket.prototype.send;
  WebSocket.prototype.send = function (text) {
    if (!this.heard) {
      this.heard = true;
      this.addEventListener('message', (message) => {
        for (const part of String(message.data).split('\u001e').filter(Boolean)) {
          const said = JSON.parse(part);
          if (said.type !== 3 || !log.sent.has(said.invocationId)) continue;
          const at = log.sent.get(said.invocationId);
          log.bytes.push(part.length);
          queueMicrotask(() => requestAnimationFrame(() => setTimeout(() => log.answered.push({ sent: at, drawn: performance.now() }))));
        }
      });
    }
    for (const part of String(text).split('\u001e').filter(Boolean)) {
      const said = JSON.parse(part);
      if (said.type === 1 && said.target === 'Change') log.sent.set(said.invocationId, performance.now());
    }
    return send.call(this, text);
  };
});
await page.goto(address);
await page.locator('svg.unrolled .opening').first().waitFor();
await page.waitForTimeout(500);

const start = await page.evaluate(() => {
  const all = [...document.querySelectorAll('svg.unrolled .opening:not(.door)')];
  const held = all[Math.floor(all.length / 2)];
  const box = held.querySelector('.leaf').getBoundingClientRect();
  const log = window.dragLog;
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
await page.evaluate(() => (window.dragLog.going = true));
const began = performance.now();
for (let i = 1; i <= moves; i++) {
  const swing = Math.sin((i / moves) * Math.PI * 6);
  await page.mouse.move(start.x + 90 * swing, start.y + 24 * Math.sin((i / moves) * Math.PI * 10));
  const wait = began + (i * 1000) / 60 - performance.now();
  if (wait > 0) await new Promise((go) => setTimeout(go, wait));
}
const took = performance.now() - began;
await page.evaluate(() => (window.dragLog.going = false));
await page.mouse.up();
await page.waitForTimeout(800);

const log = await page.evaluate(() => {
  const { events, answered, bytes, frames, handle } = window.dragLog;
  // Newest wins: an answer to a later request answers every move before that request was sent.
  const findings = [];
  let from = 0;
  for (const { sent, drawn } of answered) {
    for (; from < events.length && events[from] <= sent; from++) findings.push(drawn - events[from]);
  }
  return { events: events.length, answers: answered.length, bytes, frames, handle, findings };
});
await browser.close();

const at = (sorted, share) => sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))] ?? NaN;
const line = (name, values) => {
  const sorted = [...values].sort((a, b) => a - b);
  const of = (share) => at(sorted, share).toFixed(1).padStart(8);
  console.log(`${name.padEnd(34)}${of(0.5)}${of(0.9)}${of(0.95)}${of(0.99)}${of(1)}${String(sorted.length).padStart(7)}`);
};
console.log(`${address}: ${start.name}, ${moves} moves asked for in ${(took / 1000).toFixed(1)} s`);
console.log(`${cpus().length} cores, load ${loadavg()[0].toFixed(1)}, ${cpus()[0].model}`);
console.log(`${'ms'.padEnd(34)}${['median', 'p90', 'p95', 'p99', 'max', 'n'].map((h, i) => h.padStart(i === 5 ? 7 : 8)).join('')}`);
line('between frames, at rest', steadyWait);
line('between frames, dragging', log.frames);
line('event to frame with handle moved', log.handle);
line('event to findings redrawn', log.findings);
console.log(`${log.events} pointer events, ${log.answers} answers, ${(log.bytes.reduce((a, b) => a + b, 0) / Math.max(1, log.bytes.length) / 1000).toFixed(1)} kB an answer`);
