/** Where one can be. */
export type Place = { page: 'start' } | { page: 'wall'; house: string } | { page: 'papers'; house: string } | { page: 'print'; house: string; group: string };

export function hrefOf(place: Place): string {
  switch (place.page) {
    case 'start':
      return '/';
    case 'print':
      return `/print/${encodeURIComponent(place.house)}?of=${encodeURIComponent(place.group)}`;
    default:
      return `/${place.page}/${encodeURIComponent(place.house)}`;
  }
}

export function placeOf(address: URL | Location | HTMLAnchorElement): Place {
  const [, page, house] = address.pathname.split('/').map(decodeURIComponent);
  if (!house) return { page: 'start' };
  if (page === 'wall' || page === 'papers') return { page, house };
  if (page === 'print') return { page, house, group: new URLSearchParams(address.search).get('of') ?? '' };
  return { page: 'start' };
}

/** Follows links inside the workbench without loading the page again. */
export function followLinks(go: () => void): void {
  addEventListener('popstate', go);
  document.addEventListener('click', (event) => {
    if (event.defaultPrevented || event.button !== 0 || event.ctrlKey || event.metaKey || event.shiftKey || event.altKey) return;
    const link = (event.target as Element | null)?.closest?.('a[href]') as HTMLAnchorElement | null;
    if (link === null || link.target !== '' || link.hasAttribute('download') || link.origin !== location.origin) return;
    if (placeOf(link).page === 'start' && link.pathname !== '/') return;
    event.preventDefault();
    if (link.href !== location.href) history.pushState(null, '', link.href);
    go();
    scrollTo(0, 0);
  });
}
