import { createWriteStream } from 'node:fs';
import { rm } from 'node:fs/promises';
import { type IncomingMessage, request } from 'node:http';
import { text } from 'node:stream/consumers';
import { pipeline } from 'node:stream/promises';
import { BackupError, type Erased, erased } from '../../db/index.ts';
import { type Ask, controlIn } from './control-socket.ts';

/** Has the bot that runs in a data folder write a backup to a file. False when none runs there. */
export async function askForBackup(folder: string, file: string): Promise<boolean> {
  const answer = await ask(folder, 'backup');
  if (!answer) return false;
  try {
    await pipeline(answer, createWriteStream(file, { flags: 'wx', mode: 0o600, flush: true }));
    return true;
  } catch (error) {
    if (error instanceof Error && 'code' in error && error.code === 'EEXIST') {
      throw new BackupError(`There is a file ${file} already. Give the backup another name.`);
    }
    await rm(file, { force: true });
    throw new BackupError('The bot stopped while it made the backup. Ask again.');
  }
}

/** Asks the bot that runs in a data folder what was erased. Null when none runs there. */
export async function askForErasures(folder: string): Promise<Erased[] | null> {
  const answer = await ask(folder, 'erasures');
  return answer && erased.array().parse(JSON.parse(await text(answer)));
}

/** Null when nobody listens: the bot is stopped, or what is left of its socket is not its any more. */
function ask(folder: string, what: Ask): Promise<IncomingMessage | null> {
  return new Promise((resolve, reject) => {
    const asked = request(
      { socketPath: controlIn(folder), path: `/${what}`, method: 'POST' },
      (response) => {
        if (response.statusCode === 200) return resolve(response);
        response.resume();
        reject(new BackupError('The running bot could not do it. Its log says why.'));
      },
    );
    asked.on('error', (error) => {
      const code = 'code' in error ? error.code : '';
      if (['ENOENT', 'ECONNREFUSED', 'ENAMETOOLONG', 'EINVAL'].includes(String(code)))
        resolve(null);
      else
        reject(
          new BackupError(
            `The running bot does not answer (${String(code)}). Stop it and try again.`,
          ),
        );
    });
    asked.end();
  });
}
