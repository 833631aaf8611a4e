/**
 * The verdict on one thing: a shape and its word. The shape is for the eye alone; the word is always there,
 * so the verdict survives any eyesight, black-and-white paper and forced colours.
 */
export type MarkedVerdict = 'fits' | 'does-not-fit' | 'cannot-tell' | 'less' | 'does-not-apply';

export const verdictWords: Record<MarkedVerdict, string> = {
  fits: 'Fits',
  'does-not-fit': 'Does not fit',
  'cannot-tell': 'Cannot tell',
  less: 'Works with less',
  'does-not-apply': 'Does not apply',
};

export type VerdictMarkProps = {
  verdict: MarkedVerdict;
  /** Someone may be hurt or a part damaged: adds the triangle, crosses the hatch, and says so. */
  hazard?: boolean | undefined;
  /** Words to stand in the place of the usual one: "4 of 11 fit". */
  word?: string | undefined;
};

export function VerdictMark({ verdict, hazard = false, word }: VerdictMarkProps) {
  return (
    <span class="verdict">
      <svg viewBox="0 0 26 26" aria-hidden="true" focusable="false">
        <Shape verdict={verdict} hazard={hazard} />
      </svg>
      {hazard && (
        <svg viewBox="0 0 26 26" aria-hidden="true" focusable="false" stroke-linejoin="round" stroke-linecap="round">
          <path d="M13 3 24.5 23.5h-23ZM13 10v6M13 19.6v.4" />
        </svg>
      )}
      <span>
        {word ?? verdictWords[verdict]}
        {hazard && ', hazard'}
      </span>
    </span>
  );
}

function Shape({ verdict, hazard }: { verdict: MarkedVerdict; hazard: boolean }) {
  switch (verdict) {
    case 'fits':
      return (
        <>
          <circle cx="13" cy="13" r="11" />
          <path d="M8 13.5l3.5 3.5 7-8" />
        </>
      );
    case 'does-not-fit':
      return (
        <>
          <rect x="3" y="3" width="20" height="20" />
          <path stroke-width="1.6" d="M3 10l7-7M3 17 17 3M3 23 23 3M10 23 23 10M17 23l6-6" />
          {hazard && <path stroke-width="1.6" d="M23 10l-7-7M23 17 9 3M23 23 3 3M16 23 3 10M9 23l-6-6" />}
        </>
      );
    case 'cannot-tell':
      return (
        <>
          <rect x="3" y="3" width="20" height="20" stroke-dasharray="4.5 3" />
          <text x="13" y="18.5" text-anchor="middle">
            ?
          </text>
        </>
      );
    case 'less':
      return (
        <>
          <circle cx="13" cy="13" r="11" />
          <path d="M7.5 17.5h11M13 6.5v11" />
        </>
      );
    case 'does-not-apply':
      return <path d="M8 13h10" />;
  }
}
