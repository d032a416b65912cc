import { html, nothing, type TemplateResult } from 'lit';
import '../parts/paper-sheet';
import { hrefOf } from '../places';
import type { PapersState, SheetCard } from '../scene';
import { say } from '../words';
import { sheetAddress } from './papers';

const pages = new CSSStyleSheet();

/** Sheets one after another, each on a page of its own size, so that they come out of a printer to scale. */
export function sheetsPage(house: string, of: string, papers: PapersState, loaded: () => void, set?: string): TemplateResult {
  const sheets = papers.sheets.filter((sheet) => of === '' || (of === 'changed' && sheet.changed) || sheet.group === of || sheet.key === of);
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
          html`<paper-sheet
            class="print-sheet ${pageName(sheet)}"
            .address=${sheetAddress(house, sheet, papers.paper, set)}
            @sheet-there=${one}
          ></paper-sheet>`,
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
