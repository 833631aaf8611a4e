/** Power, heat and money of the list as rulers. */
import type { Budget, FitReport } from '../../fit/report.ts';
import { showNumber } from '../../units/money.ts';
import { Ruler } from '../ruler/Ruler.tsx';
import { showEuro } from './money.ts';

/** The budgets that are drawn as rulers; the others stand in the working. */
export const shownBudgets = ({ budgets }: FitReport): Shown[] => budgets.filter(isShown);

export function Rulers({ report }: { report: FitReport }) {
  return (
    <>
      {shownBudgets(report).map((budget) => (
        <Ruler key={budget.name} {...rulerOf(budget)} />
      ))}
    </>
  );
}

const words = {
  power: { name: 'Power', unit: 'likely peak, watts', limit: 'supply', max: 500 },
  heat: { name: 'Heat', unit: 'steady, watts', limit: 'cooler carries', max: 150 },
  money: { name: 'Money', unit: 'in euro', limit: 'brief', max: 800 },
} as const;

type Shown = Budget & { name: keyof typeof words };
const isShown = (budget: Budget): budget is Shown => budget.name in words;

function rulerOf({ name, used, limit, unknown }: Shown) {
  const word = words[name];
  const isMoney = name === 'money';
  const value = (amount: number) => amount / (isMoney ? 100 : 10);
  const show = (amount: number) => (isMoney ? showEuro(amount) : `${showNumber(value(amount))} W`);
  const max = limit === undefined ? word.max : value(limit) * 1.1;
  const left = limit === undefined ? undefined : limit - used;
  const least = unknown.length > 0 ? 'at least ' : '';
  const label = [
    `${least}${show(used)}${limit === undefined ? '' : ` of ${show(limit)}`}`,
    left === undefined ? undefined : left < 0 ? `${show(-left)} over` : `${show(left)} left`,
    unknown.length > 0 ? `${unknown.length} ${unknown.length === 1 ? 'part' : 'parts'} not recorded` : undefined,
  ].filter((part) => part !== undefined);
  return {
    name: word.name,
    unit: word.unit,
    used: value(used),
    max,
    // How much more is not known; a stretch that can be seen stands for it.
    unknown: unknown.length > 0 ? max * 0.08 : undefined,
    limit: limit === undefined ? undefined : value(limit),
    usedSays: show(used),
    limitSays: limit === undefined ? undefined : `${word.limit} ${showNumber(value(limit))}`,
    label: label.join('; '),
  };
}
