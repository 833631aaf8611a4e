/** Puts a newly built site in the place of the last one, and only a whole one. */
import { existsSync, renameSync, rmSync } from 'node:fs';
import { join } from 'node:path';

const remove = (path: string) => rmSync(path, { recursive: true, force: true });

/**
 * Builds into `.dist-next` below `top` and then gives it the name `dist`. While the build runs, and when it
 * fails, `dist` stays as it is; a run that was cut off is tidied up by the next one.
 *
 * @param build builds the site into the folder it is given and returns its exit code.
 * @returns the exit code of the build; 1 when it reports success and there is no site.
 */
export async function replaceSite(top: string, build: (outDir: string) => Promise<number>): Promise<number> {
  const [site, next, last] = [join(top, 'dist'), join(top, '.dist-next'), join(top, '.dist-last')];
  if (existsSync(last) && !existsSync(site)) renameSync(last, site);
  remove(last);
  remove(next);
  try {
    const code = await build(next);
    if (code !== 0) return code;
    if (!existsSync(next)) return 1;
    if (existsSync(site)) renameSync(site, last);
    renameSync(next, site);
    return 0;
  } finally {
    if (existsSync(last) && !existsSync(site)) renameSync(last, site);
    remove(last);
    remove(next);
  }
}
