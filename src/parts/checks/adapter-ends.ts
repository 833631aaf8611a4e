import { ofClass, type SenseCheck } from './check.ts';

/** What an adapter's ends wait for is one of its other ends. */
export const adapterEnds: SenseCheck = {
  id: 'adapter-ends',
  check: (parts) =>
    ofClass(parts, 'adapter').flatMap(({ id, ins = [], outs = [] }) =>
      outs.flatMap(({ after = [] }, n) =>
        after.flatMap((end, m) => {
          if (ins.some((one) => one.id === end)) return [];
          const expected = `one of its ins: ${ins.map((one) => one.id).join(', ')}`;
          return [{ part: id, path: ['outs', n, 'after', m], actual: `"${end}"`, expected }];
        }),
      ),
    ),
};
