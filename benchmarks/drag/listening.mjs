// A page of the workbench that keeps book of what it asked and when the answer stood on the drawing, and the table in which both runs here are told.
import { chromium } from 'playwright-core';
import { cpus, loadavg } from 'node:os';

/** Opens a page, waits for a part of it, and keeps window.log: events (filled by the run), answered ({ sent, drawn }), bytes of each answer. */
export async function opened(address, part) {
  const browser = await chromium.launch({
    executablePath: process.env.CLOM_CHROMIUM ?? '/usr/bin/chromium',
    args: ['--no-sandbox', '--disable-gpu', '--disable-quic', '--no-first-run', '--disable-background-networking', '--disable-component-update', '--disable-sync'],
  });
  const page = await browser.newPage({ viewport: { width: 1366, height: 768 } });
  await page.addInitScript(() => {
    // pictures: those that come by themselves on a stream, each of a house as it was in one revision.
    const log = { events: [], sent: new Map(), answered: [], bytes: [], pictures: [], pictureBytes: [] };
    window.log = log;
    const send = WebSocket.prototype.send;
    WebSocket.prototype.send = function (text) {
      if (!this.heard) {
        this.heard = true;
        this.addEventListener('message', (message) => {
          for (const part of String(message.data).split('\u001e').filter(Boolean)) {
            const said = JSON.parse(part);
            if (said.type === 2 && said.item?.picture?.field) {
              const { revision } = said.item;
              log.pictureBytes.push(part.length);
              queueMicrotask(() => requestAnimationFrame(() => setTimeout(() => log.pictures.push({ revision, drawn: performance.now() }))));
            }
            if (said.type !== 3 || !log.sent.has(said.invocationId)) continue;
            const at = log.sent.get(said.invocationId);
            const came = performance.now();
            log.bytes.push(part.length);
            // Without a state the house is what the page shows already.
            const revision = (log.revision = said.result?.state?.revision ?? log.revision);
            queueMicrotask(() => requestAnimationFrame(() => setTimeout(() => log.answered.push({ sent: at, came, revision, drawn: performance.now() }))));
          }
        });
      }
      for (const part of String(text).split('\u001e').filter(Boolean)) {
        const said = JSON.parse(part);
        if (said.type === 1 && (said.target === 'Change' || said.target === 'Drag')) log.sent.set(said.invocationId, performance.now());
      }
      return send.call(this, text);
    };
  });
  await page.goto(address);
  await page.locator(part).first().waitFor();
  await page.waitForTimeout(500);
  return { browser, page };
}

/** Newest wins: an answer to a later request answers every event before that request was sent. */
export function redrawn({ events, answered }) {
  const times = [];
  let from = 0;
  for (const { sent, drawn } of answered) for (; from < events.length && events[from] <= sent; from++) times.push(drawn - events[from]);
  return times;
}

/**
 * From each event to the first picture of the house as that event, or a newer one, made it. An event that leaves the house as it was (less than a step of the builder's grid) asks for no new picture: where the one of
 * its house stands already, its time ends with its answer, by which the page knows so.
 */
export function pictured({ events, answered, pictures }) {
  const times = [];
  let from = 0;
  for (const { sent, revision, drawn } of answered) {
    const picture = pictures.find((one) => one.revision >= revision);
    for (; from < events.length && events[from] <= sent; from++) if (picture) times.push(Math.max(drawn, picture.drawn) - events[from]);
  }
  return times;
}

/** Where that time goes: on the way to the server and back, and from there to the screen. */
export function wayOf({ answered }) {
  return [answered.map(({ sent, came }) => came - sent), answered.map(({ came, drawn }) => drawn - came)];
}

/** From an answer to the next request, where a move was waiting for it: what the page does before it asks again. */
export function askedAgain({ events, answered }) {
  return answered.slice(1).flatMap(({ sent }, i) => (events.some((at) => at > answered[i].sent && at < answered[i].came) ? [sent - answered[i].came] : []));
}

/** One pointer move a frame. */
export async function moved(page, moves, place) {
  const began = performance.now();
  for (let i = 1; i <= moves; i++) {
    await page.mouse.move(...place(i / moves));
    const wait = began + (i * 1000) / 60 - performance.now();
    if (wait > 0) await new Promise((go) => setTimeout(go, wait));
  }
  return performance.now() - began;
}

/** What an answer weighs. */
export const weight = (bytes) => `${(bytes.reduce((a, b) => a + b, 0) / Math.max(1, bytes.length) / 1000).toFixed(1)} kB an answer`;

export function heading(...lines) {
  for (const line of lines) console.log(line);
  console.log(`${cpus().length} cores, load ${loadavg()[0].toFixed(1)}, ${cpus()[0].model}`);
  console.log(`${'ms'.padEnd(34)}${['median', 'p90', 'p95', 'p99', 'max', 'n'].map((h, i) => h.padStart(i === 5 ? 7 : 8)).join('')}`);
}

export function row(name, values, after = '') {
  const sorted = values.toSorted((a, b) => a - b);
  const of = (share) => (sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))] ?? NaN).toFixed(1).padStart(8);
  console.log(`${name.padEnd(34)}${of(0.5)}${of(0.9)}${of(0.95)}${of(0.99)}${of(1)}${String(sorted.length).padStart(7)}${after && `   ${after}`}`);
}
