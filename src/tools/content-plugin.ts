/** Gives pages and islands the content: `import { content } from 'virtual:benchbook/content'`. */
import { join, sep } from 'node:path';
import type { Plugin } from 'vite';
import { forBrowsers } from './content/bundle.ts';
import { contentReport } from './content/report.ts';
import { loadContent } from './load-content.ts';

const name = 'virtual:benchbook/content';
const resolved = `\0${name}`;

/**
 * Content with a fault is not given out: the faults go to the terminal and the page that asked shows them.
 * While the site is worked on, a change of any content file loads all open pages anew.
 */
export function contentPlugin(): Plugin {
  let dir = 'content';
  return {
    name: 'benchbook-content',
    configResolved(config) {
      dir = join(config.root, 'content');
    },
    resolveId: (id) => (id === name ? resolved : undefined),
    load(id) {
      if (id !== resolved) return undefined;
      const outcome = loadContent(dir);
      if (!outcome.content) {
        const report = contentReport(outcome);
        console.error(report);
        throw new Error(report);
      }
      return `export const content = JSON.parse(${JSON.stringify(JSON.stringify(forBrowsers(outcome.content)))});`;
    },
    configureServer(server) {
      server.watcher.add(dir);
      server.watcher.on('all', (_, path) => {
        if (!path.startsWith(dir + sep)) return;
        for (const environment of Object.values(server.environments)) {
          const module = environment.moduleGraph.getModuleById(resolved);
          if (module) environment.moduleGraph.invalidateModule(module);
        }
        server.ws.send({ type: 'full-reload' });
      });
    },
  };
}
