/** Reads a file back into the logbook on this device, where the two are of one chain; else says how they differ. */
import { compareLogbooks } from '../../logbook/compare.ts';
import { readLogbook, tooLarge } from '../../logbook/read.ts';
import type { Logbook } from '../../logbook/types.ts';
import { count } from '../../wording/phrases.ts';
import { logbook, restore } from '../device/device.ts';

export type ReadBack = {
  says: string;
  /** What is odd about the file. */
  remarks: string[];
  /** The file's logbook, when only one of the two can stay on this device. */
  other?: Logbook;
};

const entries = (n: number) => count(n, 'entry', 'entries');

export async function readBack(file: File): Promise<ReadBack> {
  const large = tooLarge(file.size);
  if (large) return { says: `${file.name} was not read.`, remarks: [large.says] };
  const read = readLogbook(await file.text());
  const remarks = read.remarks.map(({ says }) => says);
  const theirs = read.logbook;
  if (!theirs) return { says: `${file.name} was not read. Nothing on this device was changed.`, remarks };
  const mine = logbook.value;
  const take = async (says: string): Promise<ReadBack> => {
    await restore(theirs);
    return { says, remarks };
  };
  if (!mine || mine.events.length === 0) return take(`${entries(theirs.events.length)} were read back in.`);
  const difference = Math.abs(theirs.events.length - mine.events.length);
  switch (compareLogbooks(mine, theirs)) {
    case 'same':
      return { says: 'The file holds what is already on this device. Nothing was changed.', remarks };
    case 'older':
      return {
        says: `This device has everything that is in the file, and ${entries(difference)} more. Nothing was changed.`,
        remarks,
      };
    case 'longer':
      return take(`The file went on from here: ${entries(difference)} more were read in.`);
    case 'parted':
      return {
        says: 'The file and this device were one logbook once and went on differently. A logbook is one unbroken chain, so only one of them can go on here. Give both files to your instructor.',
        remarks,
        other: theirs,
      };
    case 'other':
      return {
        says: `The file holds another logbook, with ${entries(theirs.events.length)}. Only one can be on this device.`,
        remarks,
        other: theirs,
      };
  }
}
