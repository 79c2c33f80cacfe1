import { usualButton } from '../texts/buttons.ts';
import { chooseGroup, chooseLimit, groupLabel, limitLabel } from '../texts/steps.ts';
import { type RunGroup, runGroups } from './run-groups.ts';
import { rows, type Screen } from './screen.ts';
import { type Listing, legendOf, listButton, stepButton, waysOut } from './step-listing.ts';

/** Every kind of counting; one with usual steps is marked. */
export function runGroupsScreen(listing: Listing): Screen {
  const groups = runGroups();
  const buttons = groups.map(({ id, runs }) => {
    const label = usualButton(groupLabel(runs[0]), legendOf(listing, runs).isSeen);
    return listButton(listing, label, { ...listing.list, of: id, page: 0 });
  });
  const legend = legendOf(
    listing,
    groups.flatMap(({ runs }) => runs),
  );
  return { text: chooseGroup(legend), buttons: [...rows(buttons, 2), ...waysOut(listing)] };
}

/** The steps of one kind of counting: a row for each limit, on before back. */
export function runGroupScreen(listing: Listing, { runs }: RunGroup): Screen {
  const limits = [...new Set(runs.map(({ limit }) => limit))];
  const steps = limits.map((limit) =>
    runs
      .filter((run) => run.limit === limit)
      .map((run) => stepButton(listing, run, limitLabel(run))),
  );
  return {
    text: chooseLimit(runs[0], legendOf(listing, runs)),
    buttons: [...steps, ...waysOut(listing)],
  };
}
