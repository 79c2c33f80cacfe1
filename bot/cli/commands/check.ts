import { ConfigError } from '../../roots/config.ts';
import type { Check, Finding } from '../check/check.ts';
import { databaseCheck } from '../check/database.ts';
import { encoderCheck, fontCheck } from '../check/pictures.ts';
import { nodeCheck, zoneCheck } from '../check/platform.ts';
import { tokenCheck, unmade, webhookCheck } from '../check/service.ts';
import { type AddCommand, type Cli, reporting } from '../cli.ts';
import { type Site, siteOf } from '../store.ts';

/** Looks at everything the bot needs and changes nothing: a line each, “ok” or what to do. */
export const addCheck: AddCommand = (program, bench) => {
  const { cli } = bench;
  const command = program
    .command('check')
    .description('look at everything the bot needs; each line says ok or what to do');
  reporting(command, bench, async () => {
    const findings = await findAll(cli);
    const failed = findings.some(({ ok }) => !ok);
    const text = findings.map(
      ({ what, ok, say }) => `${what.padEnd(12)}${ok ? 'ok' : 'TO DO'}  ${say}`,
    );
    return { text: text.join('\n'), data: { ok: !failed, findings }, failed };
  });
};

async function findAll(cli: Cli): Promise<Finding[]> {
  const settings = readSettings(cli);
  const found: Finding[] = [settings.finding];
  const { site } = settings;
  if (!site) return found;
  const webhook = site.config.mode === 'live' ? (site.config.webhook?.url ?? null) : null;
  const checks: readonly Check[] = [
    ...[nodeCheck, zoneCheck, databaseCheck, fontCheck, encoderCheck],
    ...[tokenCheck, webhookCheck(webhook, cli.now())],
  ];
  for (const { what, look } of checks) found.push({ what, ...(await look(site).catch(unmade)) });
  return found;
}

/** Without settings that can be read there is nothing more to look at. */
function readSettings(cli: Cli): { finding: Finding; site: Site | null } {
  try {
    const site = siteOf(cli);
    const { mode, dataDir } = site.config;
    const say =
      mode === 'live' ? `a real bot, data in ${dataDir}` : `a rehearsal, data in ${dataDir}`;
    return { finding: { what: 'settings', ok: true, say }, site };
  } catch (error) {
    if (!(error instanceof ConfigError)) throw error;
    const [, ...lines] = error.message.split('\n');
    const say = lines.join('; ') || error.message;
    return { finding: { what: 'settings', ok: false, say }, site: null };
  }
}
