import type { Given } from './scene';

/** This document with what it shows now, as one file that needs nothing else. */
export function oneFile(given: Given, title: string): string {
  const style = document.querySelector('style')?.textContent ?? '';
  const program = document.querySelector('#program')?.textContent ?? '';
  // Nothing in the data can end the element that holds it.
  const data = JSON.stringify(given).replaceAll('<', '\\u003c');
  return [
    '<!doctype html>',
    `<html lang="${document.documentElement.lang}">`,
    '<head>',
    '<meta charset="utf-8">',
    '<meta name="viewport" content="width=device-width, initial-scale=1">',
    '<meta name="color-scheme" content="light dark">',
    `<title>${title.replaceAll('&', '&amp;').replaceAll('<', '&lt;')}</title>`,
    `<style>${style}</style>`,
    '</head>',
    '<body>',
    '<div id="today"></div>',
    `<script type="application/json" id="given">${data}</` + 'script>',
    `<script id="program">${program}</` + 'script>',
    '</body>',
    '</html>',
  ].join('\n');
}

/** Gives a file to the person. */
export function give(name: string, text: string): void {
  const link = document.createElement('a');
  link.href = URL.createObjectURL(new Blob([text], { type: 'text/html' }));
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 60_000);
}
