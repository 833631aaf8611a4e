/** Finds a browser for the journeys, or gets one; says plainly what to do when it cannot. */
import { spawnSync } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { chromium } from '@playwright/test';

/** Keeps Chromium off every network but the site under test. */
export const quietArgs = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];

const debianPath = '/usr/bin/chromium';

/** Path of a Chromium that is here, or undefined. */
export function findBrowser(): string | undefined {
  const asked = process.env['BENCHBOOK_CHROMIUM'];
  return [asked, debianPath, chromium.executablePath()].find((path) => path && existsSync(path));
}

const isDebian = () =>
  existsSync('/etc/debian_version') && /debian|ubuntu/i.test(readFileSync('/etc/os-release', 'utf8'));

const run = (command: string, args: string[]) =>
  spawnSync(command, args, { stdio: ['ignore', 'inherit', 'inherit'] }).status === 0;

/** Path of a Chromium, fetched when none is here. @throws Error that says what to do by hand. */
export function getBrowser(): string {
  const here = findBrowser();
  if (here) return here;
  console.log('No Chromium is here yet; getting one for the browser journeys.');
  const isRoot = process.getuid?.() === 0;
  if (isDebian() && isRoot) {
    if (run('apt-get', ['update', '-qq'])) run('apt-get', ['install', '-y', '-qq', 'chromium']);
  } else {
    run('npx', ['playwright', 'install', 'chromium']);
  }
  const found = findBrowser();
  if (found) return found;
  throw new Error(
    'The browser journeys need Chromium and could not get it. On Debian run "sudo apt-get install chromium"; ' +
      'elsewhere run "npx playwright install chromium", or set BENCHBOOK_CHROMIUM to the path of one.',
  );
}
