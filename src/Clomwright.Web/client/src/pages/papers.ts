import { html, nothing, type TemplateResult } from 'lit';
import '../parts/issue-part';
import { footer, masthead } from '../parts/masthead';
import { hrefOf, papersAddress } from '../places';
import type { PapersState, SheetCard } from '../scene';
import { say } from '../words';

export const sheetAddress = (house: string, sheet: SheetCard, paper: string, set?: string): string => papersAddress(house, `papers/${encodeURIComponent(sheet.key)}.svg`, paper, set);

/** The papers of a house: every sheet to look at, one at a time or all together. */
export function papersPage(house: string, papers: PapersState): TemplateResult {
  const groups = [...new Set(papers.sheets.map((sheet) => sheet.group))];
  const { paper } = papers;
  return html`
    ${masthead(
      { page: 'papers', house },
      papers.name,
      html`<p>${papers.note}</p>`,
      html`<a class="act" href=${papersAddress(house, 'site.pdf', paper)} target="_blank">${say('web.papers.all-site')}</a>
        <a class="act" href=${papersAddress(house, 'office.pdf', paper)} target="_blank">${say('web.papers.all-office')}</a>
        <a class="act" href=${papersAddress(house, 'templates.pdf', paper)} target="_blank">${say('web.papers.all-templates')}</a>
        <a class="act" href=${hrefOf({ page: 'print', house, of: '', paper })} target="_blank">${say('web.papers.print-all')}</a>`,
    )}
    <main class="papers">
      <p class="sizes">
        ${say('web.papers.on')}
        ${papers.sizes.map(
          (size) => html`<a href=${hrefOf({ page: 'papers', house, paper: size })} aria-current=${size === paper ? 'true' : nothing}>${size}</a>`,
        )}
      </p>
      <details class="handing-out">
        <summary><h2>${say('web.issue.heading')}</h2></summary>
        <issue-part .house=${house} .of=${'papers'} .paper=${paper}></issue-part>
      </details>
      ${groups.map(
        (group) => html`<section aria-label=${say(`web.papers.group.${group}`)}>
          <h2>${say(`web.papers.group.${group}`)}</h2>
          <a class="print" href=${hrefOf({ page: 'print', house, of: group, paper })} target="_blank">${say('web.papers.print-these')}</a>
          <ul class="sheets">
            ${papers.sheets.filter((sheet) => sheet.group === group).map((sheet) => card(house, sheet, paper))}
          </ul>
        </section>`,
      )}
    </main>
    ${footer()}
  `;
}

function card(house: string, sheet: SheetCard, paper: string): TemplateResult {
  return html`<li>
    <a href=${hrefOf({ page: 'sheet', house, of: sheet.key, paper })}>
      <img src=${sheetAddress(house, sheet, paper)} alt="" loading="lazy" width="220" height=${Math.round((220 * sheet.height) / sheet.width)} />
      <span class="sheet-title">${sheet.title}</span>
      <span class="sheet-size">${sheet.size}</span>
    </a>
  </li>`;
}
