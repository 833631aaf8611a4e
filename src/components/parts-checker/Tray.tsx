/** An open drawer: its parts on one scale against the limit that decides, and the choice among them. */
import { useId, useState } from 'preact/hooks';
import { HatchPattern, hatchId } from '../../drawings/Hatch.tsx';
import { sayFinding } from '../../fit/say.ts';
import { classNames, type Part } from '../../parts/part.ts';
import { link } from '../link.ts';
import { VerdictMark } from '../verdict-mark/VerdictMark.tsx';
import { fitting, type WouldBe } from './counts.ts';
import { choose, countIn, type Drawer, drawerName, quantityOf, without, withQuantity } from './list.ts';
import { showEuro } from './money.ts';
import type { Checker } from './store.ts';
import { scaleOf, type TrayScale } from './tray.ts';

export function Tray({ checker, drawer, id }: { checker: Checker; drawer: Drawer; id: string }) {
  const [onlyFits, setOnlyFits] = useState(false);
  const [why, setWhy] = useState<string | undefined>();
  const list = checker.list.value;
  const tried = checker.tried.value.get(drawer.position);
  const scale = scaleOf(
    drawer,
    checker.exercise,
    checker.partOf.value,
    checker.machine.value,
    checker.budgetsWithout(drawer),
  );
  const name = drawerName(drawer);
  const isMany = drawer.to > 1;
  const chosen = countIn(drawer, list);
  const parts = drawer.parts
    .map((part) => checker.partOf.value.get(part))
    .filter((part) => part !== undefined)
    .sort(
      (a, b) =>
        (scale.values.get(a.id) ?? Infinity) - (scale.values.get(b.id) ?? Infinity) ||
        (a.priceCents ?? 0) - (b.priceCents ?? 0),
    )
    .filter(({ id: part }) => !onlyFits || !tried || quantityOf(part, list) > 0 || tried.get(part)?.verdict === 'fits');

  return (
    <fieldset class="tray" id={id}>
      <legend class="visually-hidden">{name}</legend>
      <svg class="visually-hidden" aria-hidden="true">
        <defs>
          <HatchPattern id={id} />
        </defs>
      </svg>
      <label class="tray-filter">
        <input
          type="checkbox"
          checked={onlyFits}
          onChange={({ currentTarget }) => setOnlyFits(currentTarget.checked)}
        />
        {filterSays(tried && fitting(tried))}
      </label>
      <p class="tray-what">
        {scale.what}
        {isMany && `; ${asks(drawer)} in all`}
      </p>
      <div class="tray-rows">
        {scale.limit && <Limit scale={scale} />}
        {drawer.from === 0 && !isMany && (
          <label class="tray-row tray-none">
            <span class="tray-name">None</span>
            <input
              type="radio"
              name={id}
              checked={chosen === 0}
              onChange={() => checker.change(without(drawer, list), `${name}: none.`)}
            />
          </label>
        )}
        {parts.map((part) => (
          <Row
            key={part.id}
            part={part}
            scale={scale}
            hatch={id}
            quantity={quantityOf(part.id, list)}
            would={tried?.get(part.id)}
            isWhyOpen={why === part.id}
            onWhy={() => setWhy(why === part.id ? undefined : part.id)}
          >
            {isMany ? (
              <Stepper checker={checker} drawer={drawer} part={part} chosen={chosen} />
            ) : (
              <input
                type="radio"
                name={id}
                checked={quantityOf(part.id, list) > 0}
                onChange={() => checker.change(choose(drawer, part.id, list), `${part.name} chosen.`)}
              />
            )}
          </Row>
        ))}
      </div>
      <p class="quiet tray-foot">
        {parts.length} of {drawer.parts.length} shown.
        {scale.limit &&
          scale.limit.sort !== 'mark' &&
          ` Hatched: ${scale.limit.sort === 'at-most' ? 'the part that would not fit' : 'what is missing'}.`}
        <a class="tray-more" href={`${link('parts/')}#${drawer.class}`}>
          All {classNames[drawer.class].many} by their sheets
        </a>
      </p>
    </fieldset>
  );
}

function filterSays(n: number | undefined): string {
  if (n === undefined) return 'Only those that fit';
  if (n === 0) return 'Only those that fit: none does';
  return n === 1 ? 'Only the 1 that fits' : `Only the ${n} that fit`;
}

const asks = ({ from, to }: Drawer): string =>
  from === 0 ? `${to} at most` : from === to ? `${to}` : `${from} to ${to}`;

function Limit({ scale: { limit, end } }: { scale: TrayScale }) {
  if (!limit) return null;
  const at = (limit.value / end) * 100;
  return (
    <p class="tray-limit" style={at > 50 ? { textAlign: 'right', width: `${at}%` } : { paddingLeft: `${at}%` }}>
      {limit.says}
    </p>
  );
}

type RowProps = {
  part: Part;
  scale: TrayScale;
  hatch: string;
  quantity: number;
  would: WouldBe | undefined;
  isWhyOpen: boolean;
  onWhy: () => void;
  children: preact.ComponentChildren;
};

function Row({ part, scale, hatch, quantity, would, isWhyOpen, onWhy, children }: RowProps) {
  const whyId = useId();
  const isAmiss = would !== undefined && would.verdict !== 'fits';
  const price = part.priceCents === undefined ? 'no price' : showEuro(part.priceCents);
  const value = scale.values.get(part.id);
  // A stepper has labelled buttons of its own, so only a radio's row is a label.
  const Outer =
    children && typeof children === 'object' && 'type' in children && children.type === 'input' ? 'label' : 'div';
  return (
    <div class={quantity > 0 ? 'tray-part tray-chosen' : 'tray-part'}>
      <Outer class="tray-row">
        <Bar scale={scale} value={value} hatch={hatch} />
        <span class="tray-name">{part.name}</span>
        <span class="visually-hidden">
          , {value === undefined ? `${scale.what} not recorded` : `${scale.show(value)} ${scale.what}`},{' '}
        </span>
        {!scale.isMoney && <span class="tray-price">{price}</span>}
        {children}
      </Outer>
      {quantity > 0 && (
        <p class="tray-says">
          {part.says}
          <a class="tray-more" href={link(`parts/${part.id}/`)}>
            More about the {part.name}
          </a>
        </p>
      )}
      {isAmiss && (
        <>
          <button
            type="button"
            class="button-plain tray-why"
            aria-expanded={isWhyOpen}
            aria-controls={whyId}
            onClick={onWhy}
          >
            <VerdictMark
              verdict={would.verdict}
              word={would.verdict === 'does-not-fit' ? 'Does not fit: why' : 'Cannot tell: why'}
            />
            <span class="visually-hidden"> {part.name}</span>
          </button>
          <ul id={whyId} class="tray-because" hidden={!isWhyOpen}>
            {isWhyOpen &&
              [...new Set(would.because.map((finding) => sayFinding(finding).what))].map((what) => (
                <li key={what}>{what}</li>
              ))}
          </ul>
        </>
      )}
    </div>
  );
}

function Bar({
  scale: { limit, end, show },
  value,
  hatch,
}: {
  scale: TrayScale;
  value: number | undefined;
  hatch: string;
}) {
  const percent = (of: number) => `${((of / end) * 100).toFixed(2)}%`;
  const wide = value === undefined ? 0.6 : value / end;
  const fill = `url(#${hatchId(hatch)})`;
  return (
    <svg class="tray-bar" aria-hidden="true">
      {value === undefined ? (
        <rect class="d-unknown" x="1" y="1" width="60%" height="22" />
      ) : (
        <rect class="tray-body" x="1" y="1" width={percent(value)} height="22" />
      )}
      {value !== undefined && limit?.sort === 'at-most' && value > limit.value && (
        <rect
          class="tray-hatch"
          fill={fill}
          x={percent(limit.value)}
          y="1"
          width={percent(value - limit.value)}
          height="22"
        />
      )}
      {value !== undefined && limit?.sort === 'at-least' && value < limit.value && (
        <rect
          class="tray-hatch"
          fill={fill}
          x={percent(value)}
          y="1"
          width={percent(limit.value - value)}
          height="22"
        />
      )}
      {limit && <line class="tray-line" x1={percent(limit.value)} x2={percent(limit.value)} y1="-5" y2="27" />}
      <text
        x={`${wide * 100}%`}
        dx={wide > 0.25 ? -8 : 8}
        y="12"
        text-anchor={wide > 0.25 ? 'end' : 'start'}
        dominant-baseline="central"
      >
        {value === undefined ? '?' : show(value)}
      </text>
    </svg>
  );
}

type StepperProps = { checker: Checker; drawer: Drawer; part: Part; chosen: number };

function Stepper({ checker, drawer, part, chosen }: StepperProps) {
  const list = checker.list.value;
  const quantity = quantityOf(part.id, list);
  const set = (next: number) =>
    checker.change(withQuantity(part.id, next, list), `${part.name}: ${next === 0 ? 'none' : next}.`);
  return (
    <fieldset class="stepper">
      <legend class="visually-hidden">How many {part.name}</legend>
      <button
        type="button"
        aria-label={`One fewer ${part.name}`}
        aria-disabled={quantity === 0}
        onClick={() => {
          if (quantity > 0) set(quantity - 1);
          else checker.said.value = `None is chosen of the ${part.name}.`;
        }}
      >
        −
      </button>
      <span class="stepper-count">{quantity}</span>
      <button
        type="button"
        aria-label={`One more ${part.name}`}
        aria-disabled={chosen >= drawer.to}
        onClick={() => {
          if (chosen < drawer.to) set(quantity + 1);
          else checker.said.value = `The brief asks for ${drawer.to} at most in this drawer.`;
        }}
      >
        +
      </button>
    </fieldset>
  );
}
