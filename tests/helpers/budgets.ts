/** Budgets of a list written as a rule's examples are. */
import { workingOf } from '../../src/fit/budgets/working.ts';
import { exampleList } from '../../src/fit/examples.ts';
import { kinds } from '../../src/fit/kinds.ts';
import type { Budget, BudgetName, FigureUnit } from '../../src/fit/report.ts';
import type { Example, ExampleParts, JudgeBrief } from '../../src/fit/rule.ts';

/** Every budget of the list of that name, and of that part or rail when one is named. */
export const budgetsNamed = (
  name: BudgetName,
  parts: ExampleParts,
  { brief = {}, shelf, of }: { brief?: JudgeBrief; shelf?: Example['shelf']; of?: string } = {},
): Budget[] =>
  workingOf(exampleList(parts, shelf), brief, kinds).filter(
    (budget) => budget.name === name && (of === undefined || budget.of === of),
  );

/** The only one. */
export function theBudget(...asked: Parameters<typeof budgetsNamed>): Budget {
  const [budget, ...others] = budgetsNamed(...asked);
  if (!budget || others.length > 0) throw new Error(`the list has not one budget ${asked[0]}`);
  return budget;
}

/** The figures of the working that a formula puts in, by what they are. */
export const figuresOf = ({ working }: Budget, unit: FigureUnit): Record<string, number> =>
  Object.fromEntries(working.filter((line) => line.in === unit).map(({ field, amount }) => [field, amount]));
