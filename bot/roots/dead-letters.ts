import { join } from 'node:path';
import { parseArgs } from 'node:util';
import {
  AppError,
  type DeadLetter,
  dropDeadLetter,
  listDeadLetters,
  type OpenStore,
  replayDeadLetter,
} from '../../db/index.ts';
import { machineClock } from './clocks.ts';
import { readConfig } from './config.ts';
import { createLog } from './log.ts';
import { openStore } from './open-store.ts';

const USAGE = 'npm run dead-letters [-- replay <id> | -- drop <id>]';
const UUID = /^[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}$/i;
const UPDATE = /^(\d{1,15})\/(\d{1,15})$/;

/** Shows what failed for good by a fault of ours, has one tried again, or gives one up. With the embedded database, stop the bot first. */
async function main(): Promise<void> {
  const { positionals } = parseArgs({ allowPositionals: true });
  const [what = 'list', id = ''] = positionals;
  const config = readConfig(process.env);
  const folder = { ...config, dataDir: join(config.dataDir, config.mode) };
  const letter = what === 'list' ? null : letterNamed(id);
  const store = await openStore(folder, createLog(config.logLevel));
  try {
    process.stdout.write(`${await answer(store, what, letter)}\n`);
  } catch (error) {
    throw error instanceof AppError ? new Error(refusal(error, id)) : error;
  } finally {
    await store.close();
  }
}

function letterNamed(id: string): DeadLetter {
  const [, botId, updateId] = UPDATE.exec(id) ?? [];
  if (botId && updateId) return { botId: Number(botId), updateId: Number(updateId) };
  if (UUID.test(id)) return { ledgerId: id };
  throw new Error(
    `Give an id from the list, 36 characters for a message or two numbers with a stroke for an update: ${USAGE}`,
  );
}

async function answer(store: OpenStore, what: string, letter: DeadLetter | null): Promise<string> {
  if (what === 'list') return list(store);
  if (what === 'replay' && letter) {
    await replayDeadLetter(store, letter, machineClock.now());
    return 'It is tried again as soon as the bot runs.';
  }
  if (what === 'drop' && letter) {
    await dropDeadLetter(store, letter);
    return 'It is given up.';
  }
  throw new Error(`“${what}” is not list, replay or drop: ${USAGE}`);
}

async function list(store: OpenStore): Promise<string> {
  const { messages, updates } = await listDeadLetters(store);
  if (messages.length + updates.length === 0) return 'Nothing has failed for good.';
  return [
    ...messages.map(
      ({ ledgerId, kind, botId, classId, problem, since, expiresAt }) =>
        `${ledgerId}  message  ${kind} of bot ${botId} for class ${classId}: ${problem} at ${since.toISOString()}, may be sent until ${expiresAt.toISOString()}`,
    ),
    ...updates.map(
      ({ botId, updateId, tries, since }) =>
        `${botId}/${updateId}  update  tried ${tries} times, the last time at ${since.toISOString()}`,
    ),
  ].join('\n');
}

function refusal({ code }: AppError, id: string): string {
  return code === 'expired'
    ? `The time of ${id} is over: it is not sent any more. Drop it.`
    : `${id} is no dead letter, or not any more. Look at the list: npm run dead-letters`;
}

main().catch((error) => {
  process.stderr.write(`${error instanceof Error ? error.message : String(error)}\n`);
  process.exit(2);
});
