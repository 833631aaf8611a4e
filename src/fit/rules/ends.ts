/** What stands at the ends of joints. */
import type { PartClass } from '../../parts/part.ts';
import type { Attr, Joint, UnitId, Value } from '../model.ts';
import { unitOf } from '../needs/names.ts';

/** The unit's part, when it is of that class. */
export const partAs = <P extends { readonly class: PartClass }, C extends P['class']>(
  unit: { readonly part: P },
  partClass: C,
): Extract<P, { class: C }> | undefined =>
  unit.part.class === partClass ? (unit.part as Extract<P, { class: C }>) : undefined;

/** Those memory modules that have a slot: one that goes into none says so itself, and takes no part in what the rest do. */
export const seated = <M extends { unit: UnitId }>(modules: readonly M[], joints: readonly Joint[]): readonly M[] =>
  modules.filter(({ unit }) => joints.some(({ kind, need }) => kind === 'memory-slot' && need.startsWith(`${unit}/`)));

/** Those parts of which a need is joined. */
export const joined = <P extends { unit: UnitId }>(parts: readonly P[], joints: readonly Joint[]): readonly P[] =>
  parts.filter(({ unit }) => joints.some(({ need }) => need.startsWith(`${unit}/`)));

/** What firmware calls a drive. One in a box speaks SATA; undefined when a module's link is not recorded. */
export function bootDeviceOf({ build, link }: { build?: string | undefined; link?: string | undefined }) {
  if (build !== 'm2') return 'sata';
  return link === 'pcie' ? 'nvme' : link;
}

/** How the controller at a place writes disks of the older pair of ribbons; undefined when it is not recorded. */
export function encodingsAt({ attrs }: { attrs: Record<Attr, Value> }): ('mfm' | 'rll')[] | undefined {
  const { encodings } = attrs;
  return Array.isArray(encodings) ? (['mfm', 'rll'] as const).filter((one) => encodings.includes(one)) : undefined;
}

type Listed<F extends string> = { readonly unit: UnitId; readonly name: string } & {
  readonly [K in F]: number | undefined;
};
const megabytesInGigabyte = 1000;

/** Drives of both eras, what each holds in megabytes of 10^6 bytes, and the field that says so. */
export const drivesAlike = (drives: readonly Listed<'capacityGb'>[], disks: readonly Listed<'capacityMb'>[]) => [
  ...drives.map(({ unit, name, capacityGb }) => ({
    unit,
    name,
    field: `${unit}.capacityGb`,
    holds: capacityGb === undefined ? undefined : capacityGb * megabytesInGigabyte,
  })),
  ...disks.map(({ unit, name, capacityMb }) => ({ unit, name, field: `${unit}.capacityMb`, holds: capacityMb })),
];

/** Through cables, adapters and whatever else passes a joint of its kind on: the joint at the far end from the need. */
export function rootOf(joint: Joint, joints: readonly Joint[]): Joint {
  const unit = unitOf(joint.place);
  const next = joints.find(({ kind, need }) => kind === joint.kind && need.startsWith(`${unit}/`));
  return next === undefined ? joint : rootOf(next, joints);
}
