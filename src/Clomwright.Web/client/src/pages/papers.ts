import { html, nothing, type TemplateResult } from 'lit';
import { footer, masthead } from '../parts/masthead';
import { hrefOf } from '../places';
import type { PapersState, SheetCard } from '../scene';
import { say } from '../words';

const address = (house: string, sheet: SheetCard): string => `/api/houses/${encodeURIComponent(house)}/papers/${encodeURIComponent(sheet.key)}.svg`;

/** The papers of a house: every sheet to look at, one at a time or all together. */
export function papersPage(house: string, papers: PapersState): TemplateResult {
  const groups = [...new Set(papers.sheets.map((sheet) => sheet.group))];
  const all = `/api/houses/${encodeURIComponent(house)}/papers.pdf`;
  return html`
    ${masthead(
      { page: 'papers', house },
      papers.name,
      html`<p>${papers.note}</p>`,
      html`<a class="act" href=${all} target="_blank">${say('web.papers.all')}</a>
        <a class="act" href=${hrefOf({ page: 'print', house, group: '' })} target="_blank">${say('web.papers.print-all')}</a>`,
    )}
    <main class="papers">
      ${groups.map(
        (group) => html`<section>
          <h2>${say(`web.papers.group.${group}`)}</h2>
          <a class="print" href=${hrefOf({ page: 'print', house, group })} target="_blank">${say('web.papers.print-these')}</a>
          <ul class="sheets">
            ${papers.sheets.filter((sheet) => sheet.group === group).map((sheet) => card(house, sheet))}
          </ul>
        </section>`,
      )}
    </main>
    ${footer()}
  `;
}

function card(house: string, sheet: SheetCard): TemplateResult {
  return html`<li>
    <a href=${address(house, sheet)} target="_blank">
      <img src=${address(house, sheet)} alt="" loading="lazy" width="220" height=${Math.round(220 / sheet.ratio)} />
      <span class="sheet-title">${sheet.title}</span>
      <span class="sheet-size">${sheet.size}</span>
    </a>
  </li>`;
}

/** Sheets one after another, a paper each, for the printer. */
export function printPage(house: string, group: string, papers: PapersState, loaded: () => void): TemplateResult {
  const sheets = papers.sheets.filter((sheet) => group === '' || sheet.group === group);
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
        <a href=${hrefOf({ page: 'papers', house })}>${say('web.nav.papers')}</a>
      </p>
      ${sheets.length === 0 ? html`<p class="empty">${say('web.papers.none')}</p>` : nothing}
    </header>
    <main class="print-sheets">
      ${sheets.map((sheet) => html`<img class="print-sheet" src=${address(house, sheet)} alt=${sheet.title} @load=${one} @error=${one} />`)}
    </main>
  `;
}
