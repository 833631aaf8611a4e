/** Every budget of the list, a line each that opens to its working: added up only when somebody looks. */
import { content } from 'virtual:benchbook/content';
import { useState } from 'preact/hooks';
import { type SaidBudget, sayBudget } from '../../fit/budgets/say.ts';
import { workingOf } from '../../fit/budgets/working.ts';
import { kinds } from '../../fit/kinds.ts';
import { resolveList } from '../../parts/list.ts';
import { list as listed } from '../../wording/phrases.ts';
import type { Checker } from './store.ts';

export function Working({ checker }: { checker: Checker }) {
  const [isOpen, setOpen] = useState(false);
  if (checker.list.value.length === 0) return null;
  return (
    <details class="checker-more checker-working" onToggle={({ currentTarget }) => setOpen(currentTarget.open)}>
      <summary>All sums with their working</summary>
      {isOpen && <Sums checker={checker} />}
    </details>
  );
}

const sourceOf = (id: string): string => content.sources.find((source) => source.id === id)?.title ?? id;

function Sums({ checker }: { checker: Checker }) {
  const { budgetCents } = checker.exercise.brief;
  const { input } = resolveList(checker.list.value, checker.parts.value);
  const names = new Map(checker.report.value.units.map(({ id, name }) => [id, name]));
  const nameOf = (id: string) => names.get(id) ?? id;
  return (
    <>
      {workingOf(input, budgetCents === undefined ? {} : { budgetCents }, kinds).map((budget) => (
        <Sum
          key={`${budget.name} ${budget.of} ${budget.about}`}
          said={sayBudget(budget, nameOf)}
          source={sourceOf(budget.source)}
        />
      ))}
    </>
  );
}

function Sum({ said, source }: { said: SaidBudget; source: string }) {
  const { title, rows, used, limit, unknown, formula } = said;
  return (
    <details class="checker-sum">
      <summary>
        <span class="checker-sum-title">{title}</span>{' '}
        <b class="number">{limit === undefined ? used : `${used} of ${limit}`}</b>
      </summary>
      <table>
        <caption class="visually-hidden">{title}: the working</caption>
        <tbody>
          {rows.map(({ what, amount }, row) => (
            <tr key={row}>
              <th scope="row">{what}</th>
              <td class="number">{amount}</td>
            </tr>
          ))}
        </tbody>
        <tfoot>
          <tr>
            <th scope="row">Comes to</th>
            <td class="number">{used}</td>
          </tr>
          {limit !== undefined && (
            <tr>
              <th scope="row">Limit</th>
              <td class="number">{limit}</td>
            </tr>
          )}
        </tfoot>
      </table>
      {unknown.length > 0 && <p>Not recorded: {listed(unknown)}.</p>}
      <p>
        {formula} Source: {source}.
      </p>
    </details>
  );
}
