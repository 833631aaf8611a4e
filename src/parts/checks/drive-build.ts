import { ofClass, type SenseCheck } from './check.ts';

/** A bare module says which slot it goes into; a box has no key. */
export const driveBuild: SenseCheck = {
  id: 'drive-build',
  check: (parts) =>
    ofClass(parts, 'storage-drive').flatMap((part) => {
      if (part.build === 'm2' || part.key === undefined) return [];
      return [
        { part: part.id, path: ['key'], actual: `"${part.key}"`, expected: 'no key, since only M.2 modules have one' },
      ];
    }),
};
