/** `npm run check`: all that is amiss in `content/`, in one run. Exit code 1 when anything is. */
import { contentReport } from './content/report.ts';
import { loadContent } from './load-content.ts';

const outcome = loadContent('content');
console.log(contentReport(outcome));
process.exitCode = outcome.content ? 0 : 1;
