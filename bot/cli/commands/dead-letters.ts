import {
  AppError,
  type DeadLetter,
  dropDeadLetter,
  listDeadLetters,
  type OpenStore,
  replayDeadLetter,
} from '../../../db/index.ts';
import { OperatorError, UsageError } from '../../roots/failure.ts';
import { type AddCommand, type Outcome, oneOf, reporting } from '../cli.ts';
import { withStore } from '../store.ts';

const UUID = /^[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}$/i;
const UPDATE = /^(\d{1,15})\/(\d{1,15})$/;
const LOOK = 'Look at the list: suppersums dead-letters';

/** Shows what failed for good by a fault of ours, has one tried again, or gives one up. */
export const addDeadLetters: AddCommand = (program, bench) => {
  const { cli } = bench;
  const command = program
    .command('dead-letters')
    .description(
      'list what failed for good by a fault of ours; have one tried again, or give it up',
    )
    .argument('[what]', 'list, replay or drop', 'list')
    .argument('[id]', 'an id from the list');
  reporting(command, bench, ([given = 'list', id]) => {
    const what = oneOf(given, ['list', 'replay', 'drop'], 'thing to do');
    if (what === 'list') return withStore(cli, list);
    const letter = letterNamed(id ?? '');
    return withStore(cli, async (store) => {
      try {
        if (what === 'drop') await dropDeadLetter(store, letter);
        else await replayDeadLetter(store, letter, cli.now());
      } catch (error) {
        throw error instanceof AppError ? refusal(error, id ?? '') : error;
      }
      const text =
        what === 'drop' ? 'It is given up.' : 'It is tried again as soon as the bot runs.';
      return { text, data: { what, id } };
    });
  });
};

function letterNamed(id: string): DeadLetter {
  const [, botId, updateId] = UPDATE.exec(id) ?? [];
  if (botId && updateId) return { botId: Number(botId), updateId: Number(updateId) };
  if (UUID.test(id)) return { ledgerId: id };
  throw new UsageError(
    `“${id}” is no id from the list: a message has 36 characters, an update two numbers with a stroke between. ${LOOK}`,
  );
}

async function list(store: OpenStore): Promise<Outcome> {
  const { messages, updates } = await listDeadLetters(store);
  const lines = [
    ...messages.map(
      ({ ledgerId, kind, botId, classId, problem, since, expiresAt }) =>
        `${ledgerId}  message  ${kind} of bot ${botId} for class ${classId}: ${problem} at ${since.toISOString()}, may be sent until ${expiresAt.toISOString()}`,
    ),
    ...updates.map(
      ({ botId, updateId, tries, since }) =>
        `${botId}/${updateId}  update  tried ${tries} times, the last time at ${since.toISOString()}`,
    ),
  ];
  const text = lines.join('\n') || 'Nothing has failed for good.';
  return { text, data: { messages, updates } };
}

function refusal({ code }: AppError, id: string): OperatorError {
  return new OperatorError(
    code === 'expired'
      ? `The time of ${id} is over: it is not sent any more. Drop it.`
      : `${id} is no dead letter, or not any more. ${LOOK}`,
  );
}
