// Turns the knobs of a roof and measures what a person would feel:
//   a step:   from a key pressed on a knob's tape to the frame after plan, section, states and findings are redrawn, 200 steps, each after the one before is seen
//   a pull:   the same from each move of the pointer while a tape is pulled to and fro, 200 moves, one a frame; a newer answer counts for an older move
// Times are taken inside the page; the answer is seen on the line itself. Nothing here fails on a slow machine: it only tells.
import { chromium } from 'playwright-core';
import { cpus, loadavg } from 'node:os';

const [, , address] = process.argv;
const steps = 200;

const browser = await chromium.launch({
  executablePath: process.env.CLOM_CHROMIUM ?? '/usr/bin/chromium',
  args: ['--no-sandbox', '--disable-gpu', '--disable-quic', '--no-first-run', '--disable-background-networking', '--disable-component-update', '--disable-sync'],
});
const page = await browser.newPage({ viewport: { width: 1366, height: 768 } });
await page.addInitScript(() => {
  const log = { events: [], sent: new Map(), answered: [], bytes: [] };
  window.knobLog = log;
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
  for (const kind of ['keydown', 'pointermove']) addEventListener(kind, (event) => log.going && log.events.push(event.timeStamp), { capture: true });
});
await page.goto(address);
await page.locator('knob-board .tape').first().waitFor();
await page.waitForTimeout(500);

const begin = () => page.evaluate(() => Object.assign(window.knobLog, { events: [], answered: [], bytes: [], going: true }));
const taken = async () => {
  await page.waitForTimeout(800);
  return page.evaluate(() => {
    const { events, answered, bytes } = window.knobLog;
    window.knobLog.going = false;
    const redrawn = [];
    let from = 0;
    for (const { sent, drawn } of answered) for (; from < events.length && events[from] <= sent; from++) redrawn.push(drawn - events[from]);
    return { redrawn, bytes, answers: answered.length };
  });
};

console.log(`${address}`);
console.log(`${cpus().length} cores, load ${loadavg()[0].toFixed(1)}, ${cpus()[0].model}`);
console.log(`${'ms'.padEnd(34)}${['median', 'p90', 'p95', 'p99', 'max', 'n'].map((h, i) => h.padStart(i === 5 ? 7 : 8)).join('')}`);
for (const knob of ['soil', 'eave']) {
  const tape = page.locator(`[data-knob=${knob}] .tape`);
  if ((await tape.count()) === 0) continue;
  await tape.focus();
  await begin();
  for (let i = 1; i <= steps; i++) {
    await page.keyboard.press(Math.floor(i / 10) % 2 === 0 ? 'ArrowRight' : 'ArrowLeft');
    await page.evaluate((n) => new Promise((done) => {
      const look = () => (window.knobLog.answered.length >= n ? done() : setTimeout(look, 4));
      setTimeout(done, 3000);
      look();
    }), i);
  }
  tell(`${knob}: key to all redrawn`, await taken());
  const box = await tape.boundingBox();
  const value = await tape.evaluate((el) => (el.value - el.min) / (el.max - el.min));
  const at = box.x + 6.5 + value * (box.width - 13);
  await page.mouse.move(at, box.y + box.height / 2);
  await page.mouse.down();
  await begin();
  const began = performance.now();
  for (let i = 1; i <= steps; i++) {
    await page.mouse.move(at + 60 * Math.sin((i / steps) * Math.PI * 4), box.y + box.height / 2);
    const wait = began + (i * 1000) / 60 - performance.now();
    if (wait > 0) await new Promise((go) => setTimeout(go, wait));
  }
  await page.mouse.up();
  tell(`${knob}: pull to all redrawn`, await taken());
}
await browser.close();

function tell(name, { redrawn, bytes, answers }) {
  const sorted = redrawn.toSorted((a, b) => a - b);
  const of = (share) => (sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))] ?? NaN).toFixed(1).padStart(8);
  const size = bytes.reduce((a, b) => a + b, 0) / Math.max(1, bytes.length) / 1000;
  console.log(`${name.padEnd(34)}${of(0.5)}${of(0.9)}${of(0.95)}${of(0.99)}${of(1)}${String(sorted.length).padStart(7)}   ${answers} answers of ${size.toFixed(1)} kB`);
}
