/** `npm run build`: checks the content, builds the site, and replaces the last good one only when both went well. */
import { spawn } from 'node:child_process';
import { join } from 'node:path';
import { contentReport } from './content/report.ts';
import { loadContent } from './load-content.ts';
import { replaceSite } from './replace-site.ts';

const top = join(import.meta.dirname, '../..');

/** Runs the site builder with the Node that runs this. @returns its exit code, 1 when a signal ended it. */
function buildSite(outDir: string): Promise<number> {
  const builder = join(top, 'node_modules/astro/bin/astro.mjs');
  return new Promise((resolve, reject) => {
    const child = spawn(process.execPath, [builder, 'build', '--outDir', outDir], {
      cwd: top,
      stdio: 'inherit',
      env: { ...process.env, ASTRO_TELEMETRY_DISABLED: '1' },
    });
    child.once('error', reject);
    child.once('exit', (code) => resolve(code ?? 1));
  });
}

const outcome = loadContent(join(top, 'content'));
console.log(contentReport(outcome));
process.exitCode = outcome.content ? await replaceSite(top, buildSite) : 1;
