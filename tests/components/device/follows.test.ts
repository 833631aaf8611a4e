import { globSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';

// `device.ts` uses the core of signals alone. A component follows a signal it reads while it is drawn only where
// the component library has been told how, which is what importing this package does.
const files = globSync('src/components/**/*.tsx').map((path) => ({ path, text: readFileSync(path, 'utf8') }));
const readsDevice = ({ text }: { text: string }) =>
  /import \{[^}]*\b(logbook|progress|deviceState)\b[^}]*\} from '[^']*device\/device\.ts'/.test(text);

test('components that read the logbook are there to be looked at', () => {
  expect(files.filter(readsDevice).length).toBeGreaterThan(2);
});

test('every component that reads the logbook while it is drawn follows it', () => {
  const deaf = files
    .filter(readsDevice)
    .filter(({ text }) => !text.includes("from '@preact/signals'") && !text.includes("import '@preact/signals'"));
  expect(deaf.map(({ path }) => path)).toEqual([]);
});
