import { describe, expect, test } from 'vitest';
import { exampleList } from '../../../src/fit/examples.ts';
import { judge } from '../../../src/fit/judge.ts';
import { rules } from '../../../src/fit/rules/index.ts';
import { sayFinding } from '../../../src/fit/say.ts';

const each = rules.map((rule) => [rule.id, rule] as const);

/** Every sentence that a rule's examples bring about. */
const sentences = (id: string): string[] => {
  const rule = rules.find((one) => one.id === id);
  return (rule?.examples ?? []).flatMap(({ parts, shelf, brief }) =>
    judge(exampleList(parts, shelf), brief)
      .findings.filter((finding) => finding.rule === id)
      .flatMap((finding) => Object.values(sayFinding(finding))),
  );
};

describe.each(each)('%s', (id, { basis }) => {
  test('uses the verb that its authority allows', () => {
    const said = sentences(id).join(' ');
    if (basis !== 'standard') expect(said, 'only a standard lets us write "must"').not.toMatch(/\bmust\b/i);
    if (basis !== 'practice') expect(said, 'only practice lets us write "should"').not.toMatch(/\bshould\b/i);
  });

  test('says every number with its article, plural and unit right', () => {
    for (const sentence of sentences(id)) {
      expect(sentence).not.toMatch(/\ba (8|11 |18 |80 |ATX|HDMI|SFX|x\d)/);
      expect(sentence).not.toMatch(/\ban (2|4|1[02-79]|24|mATX|SATA|USB|Mini|micro)/);
      expect(sentence).not.toMatch(/\b(1|one) (plugs|drives|cards|fans|slots|ports|modules|sockets|boards|places)\b/);
      expect(sentence, 'a difference of nothing is no difference').not.toMatch(
        /\b0 (W|A|GB|Gbit\/s|MB\/s) (too|short|less)/,
      );
    }
  });

  test('never asks in its remedy', () => {
    for (const { parts, shelf, brief } of rules.find((one) => one.id === id)?.examples ?? []) {
      for (const finding of judge(exampleList(parts, shelf), brief).findings.filter((one) => one.rule === id)) {
        expect(sayFinding(finding).remedy).not.toContain('?');
      }
    }
  });
});

test.each([
  ['expansion/bus-slot', 'Plain bus card is a 16-bit ISA card; the slot left on Plain motherboard takes 8-bit ISA.'],
  ['memory/bank-pins', 'Choose 30-pin SIMMs, or a board that takes 72-pin SIMMs.'],
  ['memory/bank-width', 'Choose modules of 64 bits each, or a processor and a board that belong together.'],
  [
    'storage/drive-port',
    'Plain fixed disk needs a place on the 34-way and the 20-way ribbon; nothing on the list offers one.',
  ],
  ['cabling/keyboard-plug', 'Plain keyboard has a USB plug; the sockets of the machine are of another kind.'],
])('%s speaks as one would at the bench', (id, sentence) => {
  expect(sentences(id)).toContain(sentence);
});
