/**
 * `npm test`: format, lint, types, unit, content check, build, browser journeys.
 * The last line is `N passed, N failed` over all of them; exit code 1 when anything failed.
 * `npm test -- unit build` runs only the named stages.
 */
import { spawnSync } from 'node:child_process';
import { existsSync, readFileSync, rmSync } from 'node:fs';
import { getBrowser } from './config/browser.ts';

type Count = { passed: number; failed: number };

const bin = (name: string) => `node_modules/.bin/${name}`;
const results = 'test-results';

function run(command: string, args: string[]): boolean {
  return spawnSync(command, args, { stdio: ['ignore', 'inherit', 'inherit'] }).status === 0;
}

/** A stage that passes or fails as a whole. */
const whole =
  (command: string, ...args: string[]) =>
  (): Count =>
    run(command, args) ? { passed: 1, failed: 0 } : { passed: 0, failed: 1 };

/** A runner that wrote its counts to `file`; a runner that wrote nothing, or failed with no test failed, counts one failure. */
function counted(command: string, args: string[], file: string, read: (report: unknown) => Count): Count {
  rmSync(file, { force: true });
  const ok = run(command, args);
  if (!existsSync(file)) return { passed: 0, failed: 1 };
  const count = read(JSON.parse(readFileSync(file, 'utf8')));
  return !ok && count.failed === 0 ? { passed: count.passed, failed: 1 } : count;
}

function unit(): Count {
  const file = `${results}/unit.json`;
  const args = [
    'run',
    '--config',
    'tests/config/vitest.ts',
    '--reporter=default',
    '--reporter=json',
    `--outputFile.json=${file}`,
  ];
  return counted(bin('vitest'), args, file, (report) => {
    const { numPassedTests, numFailedTests } = report as { numPassedTests: number; numFailedTests: number };
    return { passed: numPassedTests, failed: numFailedTests };
  });
}

function browser(): Count {
  try {
    getBrowser();
  } catch (reason) {
    console.error(reason instanceof Error ? reason.message : reason);
    return { passed: 0, failed: 1 };
  }
  const args = ['test', '--config', 'tests/config/playwright.ts'];
  return counted(bin('playwright'), args, `${results}/browser.json`, (report) => {
    const { stats } = report as { stats: { expected: number; unexpected: number; flaky: number } };
    return { passed: stats.expected, failed: stats.unexpected + stats.flaky };
  });
}

const stages: Record<string, () => Count> = {
  lint: whole(bin('biome'), 'check', '--error-on-warnings'),
  types: whole(bin('astro'), 'check', '--minimumFailingSeverity', 'warning'),
  unit,
  check: whole(process.execPath, 'src/tools/check.ts'),
  build: whole(process.execPath, 'src/tools/build.ts'),
  browser,
};

const asked = process.argv.slice(2);
const unknown = asked.filter((name) => !(name in stages));
if (unknown.length > 0) {
  console.error(`Unexpected ${unknown.join(', ')}, expected some of ${Object.keys(stages).join(', ')}.`);
  process.exit(1);
}

const total: Count = { passed: 0, failed: 0 };
for (const [name, stage] of Object.entries(stages)) {
  if (asked.length > 0 && !asked.includes(name)) continue;
  console.log(`\n${name}`);
  const count = stage();
  console.log(`${name}: ${count.passed} passed, ${count.failed} failed`);
  total.passed += count.passed;
  total.failed += count.failed;
}
console.log(`\n${total.passed} passed, ${total.failed} failed`);
process.exit(total.failed > 0 ? 1 : 0);
