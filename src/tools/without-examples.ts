/** Leaves the examples of rules out of the site: they are the rules' tests, and no page reads them. */
import type { Plugin } from 'vite';

/** The source of a rule, whose examples stand last and in the formatter's layout, without them. */
export const dropExamples = (source: string): string =>
  source.replace(/\n {2}examples: \[\n[\s\S]*?\n {2}\],\n\}\);/g, '\n  examples: [],\n});');

export function withoutExamples(): Plugin {
  return {
    name: 'benchbook-without-examples',
    enforce: 'pre',
    transform: (source, id) => (/\/src\/fit\/rules\/.+\.ts$/.test(id) ? dropExamples(source) : undefined),
  };
}
