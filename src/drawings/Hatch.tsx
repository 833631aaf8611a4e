/** The hatch of what does not fit, as a pattern of the drawing whose id it carries. In screen space, never scaled. */
export const hatchId = (drawing: string) => `${drawing}-misfit`;

export function HatchPattern({ id }: { id: string }) {
  return (
    <pattern id={hatchId(id)} width="7" height="7" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
      <rect class="d-hatch-paper" width="7" height="7" />
      <line class="d-hatch-line" x1="0" y1="0" x2="0" y2="7" />
    </pattern>
  );
}
