import { sataGenerations } from '../../../standards/drives.ts';
import { showMBps } from '../../../units/amounts.ts';
import { capital, inWords, list } from '../../../wording/phrases.ts';
import { linkMBps } from '../../needs/amounts.ts';
import { nameOf } from '../../needs/names.ts';
import { cannotTell, doesNotApply, doesNotFit, fits, gathersRule } from '../../rule.ts';

export const cardLink = gathersRule({
  id: 'storage/card-link',
  title: 'The edge of a card carries all that the drives on it can send at once',
  severity: 'note',
  basis: 'standard',
  sources: ['pci-express-base', 'sata'],
  lesson: 'fit/choosing-for-a-purpose',

  gathers: {
    'expansion-card': ['lanes', 'generation', 'moduleSlots'],
    'storage-drive': ['build', 'lanes', 'generation', 'isSolidState'],
  },
  sees: ['module-slot', 'drive-data'],
  judge({ 'expansion-card': cards, 'storage-drive': drives }, { joints }) {
    const unknown: string[] = [];
    const carriers = cards.flatMap(({ unit, name, lanes, generation, moduleSlots = [] }) => {
      // A card whose link is not recorded is told by expansion/link-width.
      const carries = linkMBps(lanes, generation);
      const on = drives.flatMap((drive) => {
        const place = joints.find(({ need }) => need.startsWith(`${drive.unit}/`))?.place;
        if (!place?.startsWith(`${unit}/`)) return [];
        const slot = moduleSlots.find(({ id }) => place === nameOf(unit, 'module-slot', id));
        if (drive.build === 'm2') {
          // A link that is not recorded is told by storage/module-link-speed.
          const own = linkMBps(drive.lanes, drive.generation) ?? 0;
          return [{ ...drive, sends: Math.min(own, linkMBps(slot?.lanes, slot?.generation) ?? own) }];
        }
        if (drive.isSolidState === undefined) unknown.push(`${drive.unit}.isSolidState`);
        // Spinning discs send so much less than their cable carries that they do not count.
        return [{ ...drive, sends: drive.isSolidState ? sataGenerations[3].megabytes : 0 }];
      });
      if (carries === undefined || on.length < 2) return [];
      return [{ unit, name, carries, on, send: on.reduce((sum, { sends }) => sum + sends, 0) }];
    });
    const full = carriers.find(({ send, carries }) => send > carries);
    const told = full ?? carriers[0];
    if (told === undefined) return doesNotApply;
    if (full === undefined && unknown.length > 0) return cannotTell(...unknown);
    const facts = {
      card: told.name,
      drives: [...new Set(told.on.map(({ name }) => name))],
      count: told.on.length,
      send: told.send,
      carries: told.carries,
      less: told.send - told.carries,
    };
    const about = [told.unit, ...told.on.map(({ unit }) => unit)];
    return full ? doesNotFit(facts, about) : fits(facts, about);
  },

  say: {
    fits: ({ card, carries }) =>
      `The edge of ${card} carries ${showMBps(carries)}, as much as its drives send together.`,
    doesNotFit: ({ card, drives, count, send, carries, less }) => ({
      headline: `The card carries ${showMBps(less)} less`,
      what: `${capital(inWords(count))} drives on ${card} (${list(drives)}) can send ${showMBps(send)} together; its edge carries ${showMBps(carries)}, so ${showMBps(less)} less.`,
      why: 'All that is on a card goes through its one edge. Each drive alone is as fast as it can be there; when several are busy they share.',
      remedy: 'Choose a card with more lanes, or put one of the drives on the board, or leave it as it is.',
    }),
    cannotTell: () => ({
      headline: 'Have the drives moving parts?',
      what: 'Whether a drive on the card spins is not recorded, so it is not judged whether the card slows the drives down.',
      findOut: 'Read the label: one that names revolutions a minute spins; SSD says that it has no moving parts.',
    }),
  },

  // Four lanes of generation 3 carry 3,938 MB/s, eight of them 7,876 MB/s: the figures of the standard, rounded down.
  examples: [
    {
      title: 'two drives of four lanes on a card of eight',
      parts: {
        'expansion-card': {
          lanes: 8,
          generation: 3,
          moduleSlots: [
            { id: 'm2-1', lengthsMm: [80], lanes: 4, generation: 3 },
            { id: 'm2-2', lengthsMm: [80], lanes: 4, generation: 3 },
          ],
        },
        'storage-drive': [
          { lanes: 4, generation: 3 },
          { lanes: 4, generation: 3 },
        ],
        motherboard: { moduleSlots: [] },
      },
      verdict: 'fits',
    },
    {
      title: 'two drives of four lanes on a card of four',
      parts: {
        'expansion-card': {
          lanes: 4,
          generation: 3,
          moduleSlots: [
            { id: 'm2-1', lengthsMm: [80], lanes: 4, generation: 3 },
            { id: 'm2-2', lengthsMm: [80], lanes: 4, generation: 3 },
          ],
        },
        'storage-drive': [
          { lanes: 4, generation: 3 },
          { lanes: 4, generation: 3 },
        ],
        motherboard: { moduleSlots: [] },
      },
      verdict: 'does-not-fit',
    },
    {
      title: 'two drives without moving parts on four ports behind one lane',
      parts: {
        'expansion-card': {
          role: 'storage',
          lanes: 1,
          generation: 3,
          dataSockets: [
            { id: 'port-1', plug: 'sata' },
            { id: 'port-2', plug: 'sata' },
          ],
        },
        'storage-drive': [
          { build: '2.5', isSolidState: true },
          { build: '2.5', isSolidState: true },
        ],
        motherboard: { sataPorts: 0 },
      },
      verdict: 'does-not-fit',
    },
    {
      title: 'not recorded whether a drive spins',
      parts: {
        'expansion-card': {
          role: 'storage',
          lanes: 1,
          generation: 3,
          dataSockets: [
            { id: 'port-1', plug: 'sata' },
            { id: 'port-2', plug: 'sata' },
          ],
        },
        'storage-drive': [
          { build: '2.5', isSolidState: true },
          { build: '2.5', isSolidState: undefined },
        ],
        motherboard: { sataPorts: 0 },
      },
      verdict: 'cannot-tell',
    },
    {
      title: 'one drive alone is told by its own slot',
      parts: {
        'expansion-card': { moduleSlots: [{ id: 'm2-1', lengthsMm: [80], lanes: 4, generation: 3 }] },
        'storage-drive': {},
        motherboard: { moduleSlots: [] },
      },
      verdict: 'does-not-apply',
    },
  ],
});
