import Papa from 'papaparse';
import { describe, expect, test } from 'vitest';
import { parse } from 'yaml';
import { aPart } from '../../../src/fit/examples.ts';
import { type Part, partClasses } from '../../../src/parts/part.ts';
import { columnsOf } from '../../../src/tools/import/columns.ts';
import { readTable } from '../../../src/tools/import/read-table.ts';
import { readRows } from '../../../src/tools/import/rows.ts';
import { templateOf } from '../../../src/tools/import/template.ts';
import { showFault } from '../../../src/wording/fault.ts';
import { content } from '../../helpers/content.ts';

function importText(text: string) {
  const table = readTable('parts.csv', text);
  const { parts, faults } = readRows(table, content);
  return { parts, says: [...table.faults, ...faults].map(showFault) };
}

/** A part as the cells an instructor would fill in: groups by full stops, entries numbered, lists with semicolons. */
function cellsOf(value: unknown, name = ''): [string, string][] {
  const inside = (key: string) => (name === '' ? key : `${name}.${key}`);
  if (value === null) return [[name, 'none']];
  if (Array.isArray(value)) {
    if (value.length > 0 && value.every((entry) => typeof entry === 'object')) {
      return value.flatMap((entry, n) => cellsOf(entry, inside(String(n + 1))));
    }
    return [[name, value.length === 0 ? 'none' : value.join('; ')]];
  }
  if (typeof value === 'object') return Object.entries(value).flatMap(([key, one]) => cellsOf(one, inside(key)));
  return [[name, typeof value === 'boolean' ? (value ? 'yes' : 'no') : String(value)]];
}

const tableOf = (part: Part) => {
  const cells = cellsOf(part);
  return Papa.unparse([cells.map(([name]) => name), cells.map(([, cell]) => cell)]);
};

/** Without its price, which beside a catalogue might make no sense. Lists that a part records as empty lists of groups: the cell "none" cannot stand in a column of one entry. */
const bare = (part: Part): Part => {
  const fields = Object.entries(part).filter(
    ([name, value]) => name !== 'priceCents' && !(Array.isArray(value) && value.length === 0),
  );
  return Object.fromEntries(fields) as unknown as Part;
};

describe('a table of parts', () => {
  test.each(partClasses)('%s: what is filled in comes back as the part it was', (partClass) => {
    const part = bare({ ...aPart(partClass), id: 'quay-1', source: 'demo-catalogue' });
    const { parts, says } = importText(tableOf(part));
    expect(says).toEqual([]);
    expect(parts.map(({ path }) => path)).toEqual([`content/parts/${partClass}/quay-1.yaml`]);
    expect(parse(parts[0]?.text ?? '')).toEqual(part);
  });

  test('a sheet from a machine that writes commas in numbers and semicolons between cells is read', () => {
    const { parts, says } = importText(
      '\uFEFFclass;id;name;maker;source;heightMm;mountings;memoryHeightMm;isPassive\r\ncooler;quay-1;Quay 1;Skarn;demo-catalogue;158,5;"square-80; tri-62";none;No\r\n',
    );
    expect(says).toEqual([]);
    expect(parse(parts[0]?.text ?? '')).toEqual({
      class: 'cooler',
      id: 'quay-1',
      name: 'Quay 1',
      maker: 'Skarn',
      source: 'demo-catalogue',
      heightMm: 158.5,
      mountings: ['square-80', 'tri-62'],
      memoryHeightMm: null,
      isPassive: false,
    });
  });

  test('rows of several classes may stand in one table', () => {
    const { parts, says } = importText(
      'class,id,name,maker,source,sizeMm,plug\nfan,quay-1,Quay 1,Skarn,demo-catalogue,120,\nkeyboard,quay-2,Quay 2,Skarn,demo-catalogue,,usb-a\n',
    );
    expect(says).toEqual([]);
    expect(parts.map(({ path }) => path)).toEqual([
      'content/parts/fan/quay-1.yaml',
      'content/parts/keyboard/quay-2.yaml',
    ]);
  });

  test('every slip of every row is told, with its row and column', () => {
    const { says } = importText(
      [
        'class,id,name,maker,source,heightMm,weight,isPassive',
        '# a comment,,,,,,,',
        'cooler,quay-1,Quay 1,Skarn,demo-catalog,158 mm,,maybe',
        '',
        'coler,quay-2,Quay 2,Skarn,demo-catalogue,158,,',
        'cooler,quay-3,,Skarn,demo-catalogue,0,900,',
        'cooler,quay-3,Quay 3,Skarn,demo-catalogue,5000,,',
        ',quay-4,Quay 4,Skarn,demo-catalogue,5,,',
      ].join('\n'),
    );
    expect(says.toSorted()).toEqual(
      [
        'parts.csv:3:6  part/wrong-type  Unexpected "158 mm", expected a number in millimetres',
        'parts.csv:3:8  part/wrong-type  Unexpected "maybe", expected true or false',
        'parts.csv:3:5  part/unknown-source  Unexpected "demo-catalog", expected demo-catalogue',
        'parts.csv:5:1  part/unknown-class  Unexpected "coler", expected cooler',
        `parts.csv:6:7  part/unknown-field  Unexpected weight, expected a column of the template of cooler`,
        'parts.csv:6:6  part/empty-measure  Unexpected 0, expected a number in millimetres; leave it out when it is not known',
        'parts.csv:7:6  part/out-of-range  Unexpected 5000, expected a number in millimetres, 2000 or less',
        `parts.csv:8:1  part/unknown-class  Unexpected a row without a class, expected a class: one of ${partClasses.join(', ')}`,
      ].toSorted(),
    );
  });

  test('an id is taken by the catalogue, or by a row above', () => {
    const taken = content.parts.find((part) => part.class === 'fan')?.id ?? '';
    const { says } = importText(
      `class,id,name,maker,source\nfan,${taken},A,Skarn,demo-catalogue\nfan,quay-1,B,Skarn,demo-catalogue\nfan,quay-1,C,Skarn,demo-catalogue\n`,
    );
    expect(says).toEqual([
      `parts.csv:2:2  part/doubled-id  Unexpected "${taken}", which the catalogue has, expected an id of its own`,
      'parts.csv:4:2  part/doubled-id  Unexpected "quay-1" a second time, expected an id of its own\n  parts.csv:3:2  the id was first used here',
    ]);
  });

  test('a row that makes no sense beside the catalogue is told at its cell', () => {
    const { says } = importText(
      'class,id,name,maker,source,ratedW,leads.1.id,leads.1.plugs,leads.1.carriesW\npower-supply,quay-1,Quay 1,Skarn,demo-catalogue,450,card-1,pcie-8,600\n',
    );
    expect(says).toEqual([
      'parts.csv:2:9  part/supply-leads  Unexpected 600 W, expected 450 W or less, which is all the supply gives',
    ]);
  });

  test('a column that leads nowhere is told where it parts from those there are', () => {
    const head = (name: string) => `class,id,name,maker,source,${name}\nfan,quay-1,Quay 1,Skarn,demo-catalogue,1\n`;
    expect(importText(head('light.milliamp')).says).toEqual([
      'parts.csv:2:6  part/unknown-field  Unexpected light.milliamp, expected light.milliamps',
    ]);
    expect(importText(head('ofers.1.shop')).says).toEqual([
      'parts.csv:2:6  part/unknown-field  Unexpected ofers.1.shop, expected offers.1.shop',
    ]);
    for (const name of ['leads.99.id', '__proto__.x', 'offers', 'offers.one.shop', 'sizeMm.x']) {
      expect(importText(head(name)).says).toEqual([
        `parts.csv:2:6  part/unknown-field  Unexpected ${name}, expected a column of the template of fan`,
      ]);
    }
  });

  test('columns that are doubled, have no name, or a quotation mark that never ends are told', () => {
    expect(importText('class,id,id\n').says).toEqual([
      'parts.csv:1:3  import/doubled-column  Unexpected id a second time, expected each column once',
    ]);
    expect(importText('class,id,\nfan,quay-1,x\n').says[0]).toContain(
      'parts.csv:2:3  import/no-column  Unexpected "x"',
    );
    expect(importText('class,id\nfan,"quay-1\n').says[0]).toContain('import/quotes');
    expect(importText('').says[0]).toContain('import/no-columns');
  });
});

describe('the template of a class', () => {
  test.each(partClasses)('%s: reads back as a table with one row to fill in and nothing unknown', (partClass) => {
    const [head = [], says = []] = Papa.parse<string[]>(templateOf(partClass).replace(/^\uFEFF/, '')).data;
    expect(head).toEqual(columnsOf(partClass).map(({ name }) => name));
    expect(says.length).toBe(head.length);
    expect(says.every((cell) => cell !== '')).toBe(true);
    const table = readTable('template.csv', templateOf(partClass));
    expect(table.faults).toEqual([]);
    expect(table.rows.length).toBe(1);
    const unknown = readRows(table, content).faults.filter(({ id }) => id === 'part/unknown-field');
    expect(unknown).toEqual([]);
  });

  test('says the unit and the meaning of a column, as its schema does', () => {
    const [head = [], says = []] = Papa.parse<string[]>(templateOf('graphics-card')).data;
    expect(says[head.indexOf('lengthMm')]).toBe(
      'From the bracket to the far end (a number in millimetres; leave empty when not known)',
    );
    expect(says[head.indexOf('outputs.1.plug')]).toContain('needed when anything of outputs.1 is filled in');
    expect(says[head.indexOf('id')]).toMatch(/needed$/);
  });
});
