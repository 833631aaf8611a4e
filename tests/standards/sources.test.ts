import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { parse } from 'yaml';

const folder = new URL('../../content/sources/', import.meta.url);
const files = readdirSync(folder);
const ids = new Set(files.map((file) => file.replace(/\.yaml$/, '')));

describe('sources', () => {
  it.each(files)('%s names itself, its title, publisher, kind and where', (file) => {
    const source: Record<string, unknown> = parse(readFileSync(new URL(file, folder), 'utf8'));
    expect(Object.keys(source)).toEqual(['id', 'title', 'publisher', 'kind', 'where']);
    expect(`${source['id']}.yaml`).toBe(file);
    expect(['standard', 'maker', 'practice', 'invented']).toContain(source['kind']);
  });

  it('exist for every table of the standards', () => {
    const standards = new URL('../../src/standards/', import.meta.url);
    const cited = readdirSync(standards).flatMap((file) => {
      const text = readFileSync(new URL(file, standards), 'utf8');
      const lists = [...text.matchAll(/Sources = \[([^\]]+)\]/g)].map((match) => match[1] ?? '');
      const found = [
        ...[...text.matchAll(/[sS]ources?(?:: | = )['`]([^'`]+)['`]/g)].map((match) => match[1]),
        ...lists.flatMap((list) => [...list.matchAll(/'([^']+)'/g)].map((match) => match[1])),
      ];
      expect(found, `${file} cites nothing`).not.toHaveLength(0);
      return found;
    });
    for (const id of cited) expect(ids, id).toContain(id);
  });
});
