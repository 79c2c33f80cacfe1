import { failureOf } from './roots/failure.ts';
import { startBot } from './roots/start-bot.ts';

const out = (line: string) => void process.stdout.write(`${line}\n`);
const err = (line: string) => void process.stderr.write(`${line}\n`);

startBot(process.env, process.argv.slice(2), { out, err }).then(process.exit, (error) => {
  const { line, exitCode } = failureOf(error);
  err(line);
  process.exit(exitCode);
});
