/** What each field of a class means: the docstrings of its schema, so that they are written once. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import ts from 'typescript';
import type { PartClass } from '../../parts/part.ts';

const parts = join(import.meta.dirname, '../../parts');

/** By the names that lead to a field, without numbers: `leads.carriesW`. */
export function meaningsOf(of: PartClass): ReadonlyMap<string, string> {
  const meanings = new Map<string, string>();
  for (const file of [`classes/${of}.ts`, 'common.ts', 'classes/shared.ts']) {
    const text = readFileSync(join(parts, file), 'utf8');
    const visit = (node: ts.Node, path: readonly string[]): void => {
      const isField = ts.isPropertyAssignment(node) && ts.isIdentifier(node.name);
      // A piece that several classes share is called as the field that holds it.
      const isPiece = file.endsWith('shared.ts') && ts.isVariableDeclaration(node) && ts.isIdentifier(node.name);
      const here = isField || isPiece ? [...path, (node.name as ts.Identifier).text] : path;
      const says = isField ? docstring(text, node) : undefined;
      if (says !== undefined && !meanings.has(here.join('.'))) meanings.set(here.join('.'), says);
      ts.forEachChild(node, (child) => visit(child, here));
    };
    visit(ts.createSourceFile(file, text, ts.ScriptTarget.Latest), []);
  }
  return meanings;
}

function docstring(text: string, node: ts.Node): string | undefined {
  const comment = ts
    .getLeadingCommentRanges(text, node.getFullStart())
    ?.map(({ pos, end }) => text.slice(pos, end))
    .findLast((one) => one.startsWith('/**'));
  return comment
    ?.slice(3, -2)
    .replace(/^\s*\* ?/gm, '')
    .replaceAll('`', '')
    .replace(/\s+/g, ' ')
    .trim();
}
