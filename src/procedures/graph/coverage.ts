/** Which kinds of joint machines have, and whether a procedure makes each of them once. */
import type { KindName } from '../../fit/model.ts';
import type { PartClass } from '../../parts/part.ts';
import type { Place, Source } from '../syntax/source.ts';
import type { PlacedStep } from './placed-step.ts';

/**
 * For each kind, the classes whose joints a procedure of a whole machine makes. Other classes may have them too: a card
 * says which joints of a list no step makes.
 */
export const joinedClasses: Record<KindName, readonly PartClass[]> = {
  'processor-socket': ['processor'],
  'cooler-mount': ['cooler'],
  cooling: ['processor'],
  'memory-slot': ['memory-module'],
  'memory-bank': [],
  'expansion-slot': ['graphics-card'],
  'module-slot': ['storage-drive'],
  'drive-data': ['storage-drive'],
  'drive-bay': ['storage-drive'],
  'board-mount': ['motherboard'],
  'supply-mount': ['power-supply'],
  'fan-mount': ['fan'],
  'radiator-mount': [],
  'board-power': ['motherboard'],
  'processor-power': ['motherboard'],
  'card-power': ['graphics-card', 'motherboard'],
  'drive-power': ['storage-drive', 'motherboard'],
  'fan-header': ['cooler', 'chassis', 'fan'],
  'front-panel': ['chassis'],
  picture: ['monitor'],
  keyboard: [],
  pointer: [],
  mains: [],
  setting: [],
  'coprocessor-socket': [],
  'light-header': [],
  'monitor-mount': [],
};

export const kindNames = Object.keys(joinedClasses) as [KindName, ...KindName[]];

/**
 * Every kind of joint is made by at most one step for each class; by exactly one in a procedure that
 * builds a whole machine, which says so at `whole`.
 */
export function checkCoverage(source: Source, steps: readonly PlacedStep[], whole: Place | undefined): void {
  for (const kind of kindNames) {
    const classes = joinedClasses[kind];
    const told = new Set<PlacedStep>();
    for (const of of classes.length > 0 ? classes : [undefined]) {
      const makers = steps.filter((step) => makes(step, kind, of));
      const [first, ...others] = makers;
      if (!first) {
        if (whole && of) {
          source.fault('kind-not-made', whole, `no step that makes the ${kind} joint of a ${of}`, 'one step');
        }
        continue;
      }
      for (const other of others) {
        if (told.has(other)) continue;
        told.add(other);
        source.fault(
          'kind-made-twice',
          other.at,
          `a second step that makes the ${kind} joint${of ? ` of a ${of}` : ''}`,
          'one step',
          {
            text: `the step ${first.id} makes it`,
            at: first.at,
          },
        );
      }
    }
  }
}

const makes = (step: PlacedStep, kind: KindName, of: PartClass | undefined): boolean =>
  (step.joints === kind && (step.of === undefined || of === undefined || step.of === of)) ||
  (step.also?.includes(kind) ?? false);
