/** Every budget of the list with its working, as tables: added up only when somebody looks. */
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
      {isOpen && <Tables checker={checker} />}
    </details>
  );
}

const sourceOf = (id: string): string => content.sources.find((source) => source.id === id)?.title ?? id;

function Tables({ checker }: { checker: Checker }) {
  const { budgetCents } = checker.exercise.brief;
  const { input } = resolveList(checker.list.value, checker.parts.value);
  const names = new Map(checker.report.value.units.map(({ id, name }) => [id, name]));
  const nameOf = (id: string) => names.get(id) ?? id;
  return (
    <>
      {workingOf(input, budgetCents === undefined ? {} : { budgetCents }, kinds).map((budget) => (
        <Table
          key={`${budget.name} ${budget.of} ${budget.about}`}
          said={sayBudget(budget, nameOf)}
          source={sourceOf(budget.source)}
        />
      ))}
    </>
  );
}

function Table({ said, source }: { said: SaidBudget; source: string }) {
  return (
    <section class="checker-sum">
      <table>
        <caption>{said.title}</caption>
        <tbody>
          {said.rows.map(({ what, amount }, row) => (
            <tr key={row}>
              <th scope="row">{what}</th>
              <td class="number">{amount}</td>
            </tr>
          ))}
        </tbody>
        <tfoot>
          <tr>
            <th scope="row">Comes to</th>
            <td class="number">{said.used}</td>
          </tr>
          {said.limit !== undefined && (
            <tr>
              <th scope="row">Limit</th>
              <td class="number">{said.limit}</td>
            </tr>
          )}
        </tfoot>
      </table>
      {said.unknown.length > 0 && <p>Not recorded: {listed(said.unknown)}.</p>}
      <p>
        {said.formula} Source: {source}.
      </p>
    </section>
  );
}
