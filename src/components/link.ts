/** The address of a page of this site, which may be served under a sub-path: `link('logbook/')`. */
export function link(path: string): string {
  return `${import.meta.env.BASE_URL.replace(/\/$/, '')}/${path}`;
}
