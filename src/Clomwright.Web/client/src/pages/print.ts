import { html, nothing, type TemplateResult } from 'lit';
import { hrefOf } from '../places';
import type { PapersState, SheetCard } from '../scene';
import { say } from '../words';
import { sheetAddress } from './papers';

const pages = new CSSStyleSheet();

/** Sheets one after another for the printer, each on a page of its own size, so that they come out to scale. */
export function printPage(house: string, group: string, papers: PapersState, loaded: () => void): TemplateResult {
  const sheets = papers.sheets.filter((sheet) => group === '' || sheet.group === group);
  pages.replaceSync(sheets.map(pageRules).join('\n'));
  if (!document.adoptedStyleSheets.includes(pages)) document.adoptedStyleSheets.push(pages);
  let waiting = sheets.length;
  const one = (): void => {
    waiting -= 1;
    if (waiting === 0) loaded();
  };
  return html`
    <header class="print-note">
      <h1>${papers.name}</h1>
      <p>${papers.note}</p>
      <p>
        <button type="button" @click=${() => print()}>${say('web.print.again')}</button>
        <a href=${hrefOf({ page: 'papers', house, paper: papers.paper })}>${say('web.nav.papers')}</a>
      </p>
      ${sheets.length === 0 ? html`<p class="empty">${say('web.papers.none')}</p>` : nothing}
    </header>
    <main class="print-sheets">
      ${sheets.map(
        (sheet) =>
          html`<img class="print-sheet ${pageName(sheet)}" src=${sheetAddress(house, sheet, papers.paper)} alt=${sheet.title} @load=${one} @error=${one} />`,
      )}
    </main>
  `;
}

function pageName(sheet: SheetCard): string {
  return `page-${Math.round(sheet.width * 10)}-${Math.round(sheet.height * 10)}`;
}

function pageRules(sheet: SheetCard): string {
  const [name, width, height] = [pageName(sheet), `${sheet.width}mm`, `${sheet.height}mm`];
  return `@page ${name} { size: ${width} ${height}; margin: 0; }
    .${name} { aspect-ratio: ${sheet.width} / ${sheet.height}; }
    @media print { .${name} { page: ${name}; width: ${width}; height: ${height}; } }`;
}
