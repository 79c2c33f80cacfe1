/** What a page may name, so that whoever follows it finds it. */
export interface Known {
  /** npm scripts. */
  readonly scripts: ReadonlySet<string>;
  /** The commands of `suppersums` and the options of each, with their dashes. */
  readonly commands: ReadonlyMap<string, ReadonlySet<string>>;
  /** Variables of the environment and constants of the code. */
  readonly constants: ReadonlySet<string>;
  /** Commands in the chat, without their slash. */
  readonly typed: ReadonlySet<string>;
  /** Whether there is such a file or folder, named from the project's folder. */
  readonly exists: (path: string) => boolean;
}

/** Folders of the project whose files a page names; what a run makes (`data/`, `demo-week/`) is not looked for. */
const OURS = /^(?:\.ci|bot|db|drills|jobs|rehearsal|tests)\/[\w./-]*$/;
const AT_THE_TOP =
  /^(?:[A-Z]+\.md|docker-compose\.yml|(?:package|package-lock|biome|tsconfig)\.json|\.env\.example|NOTICE|LICENSE)$/;
/** Npm's own words that are no script. */
const OF_NPM = new Set(['ci', 'install', 'pack', 'exec', 'audit', 'link']);

/**
 * Everything in code on a page that is not there: npm scripts, commands of `suppersums` with their options, variables, files, and
 * commands in the chat. One line each.
 *
 * @example
 * unknownIn('Run `npm run dance`.', known); // ['npm run dance']
 */
export function unknownIn(page: string, known: Known): string[] {
  return codeIn(page).flatMap((code) => [
    ...unknownScripts(code, known),
    ...unknownCommands(code, known),
    ...unknownConstants(code, known),
    ...unknownTyped(code, known),
    ...unknownFiles(code, known),
  ]);
}

/** Code spans, and the lines of code blocks; a line that goes on behind a backslash is one. */
function codeIn(page: string): string[] {
  const blocks = [...page.matchAll(/^```\w*\n(.*?)^```$/gms)].map(([, block]) => block ?? '');
  const prose = page.replaceAll(/^```\w*\n.*?^```$/gms, '');
  const spans = [...prose.matchAll(/`([^`\n]+)`/g)].map(([, span]) => span ?? '');
  return [...spans, ...blocks.flatMap((block) => block.replaceAll(/\\\n\s*/g, '').split('\n'))];
}

function unknownScripts(code: string, { scripts }: Known): string[] {
  const ran = [...code.matchAll(/\bnpm run (?:-s )?([\w:-]+)/g)].map(([, name]) => name ?? '');
  const short = [...code.matchAll(/\bnpm (start|test|[a-z]+)\b/g)]
    .map(([, name]) => name ?? '')
    .filter((name) => name !== 'run' && !OF_NPM.has(name));
  return [...ran, ...short].filter((name) => !scripts.has(name)).map((name) => `npm run ${name}`);
}

function unknownCommands(code: string, { commands }: Known): string[] {
  return [
    ...code.matchAll(/(?<![\w/:.@-]|-u )suppersums(?:\.js)? ([a-z][\w-]*)([^|&;]*)/g),
  ].flatMap(([, name = '', rest = '']) => {
    const options = commands.get(name);
    if (!options) return [`suppersums ${name}`];
    const asked = [...rest.matchAll(/(?<!\S)--[a-z][a-z-]*/g)].map(([option]) => option);
    return asked.filter((option) => !options.has(option)).map((o) => `suppersums ${name} ${o}`);
  });
}

function unknownConstants(code: string, { constants }: Known): string[] {
  const assigned = [...code.matchAll(/(?<![\w$./-])([A-Z][A-Z0-9_]+)=/g)];
  const named = [...code.matchAll(/^([A-Z][A-Z0-9]*_[A-Z0-9_]+)$/g)];
  return [...assigned, ...named].map(([, name]) => name ?? '').filter((n) => !constants.has(n));
}

function unknownTyped(code: string, { typed }: Known): string[] {
  const [, name] = /^\/([a-z]+)(?: [\w:. -]+)?$/.exec(code) ?? [];
  return name === undefined || typed.has(name) ? [] : [`/${name}`];
}

function unknownFiles(code: string, { exists }: Known): string[] {
  return code
    .split(/[\s,"']+/)
    .map((word) => word.replace(/[.:]$/, ''))
    .filter((word) => OURS.test(word) || AT_THE_TOP.test(word))
    .filter((word) => !exists(word));
}

/** A link or a picture of a page. `words` is the link's text or what a picture shows. */
export interface Link {
  readonly target: string;
  readonly words: string;
  readonly isPicture: boolean;
}

/** The links and pictures of a page, but for those that lead out of the project. */
export function linksIn(page: string): Link[] {
  const prose = page.replaceAll(/^```\w*\n.*?^```$/gms, '');
  const written = [...prose.matchAll(/(!?)\[([^\]]*)\]\(([^)\s]+)\)/g)].map(
    ([, mark, words = '', target = '']) => ({ target, words, isPicture: mark === '!' }),
  );
  const sized = [...prose.matchAll(/<img\b[^>]*>/g)].map(([tag]) => ({
    target: /\bsrc="([^"]*)"/.exec(tag)?.[1] ?? '',
    words: /\balt="([^"]*)"/.exec(tag)?.[1] ?? '',
    isPicture: true,
  }));
  return [...written, ...sized].filter(({ target }) => !/^[a-z]+:/.test(target));
}

/**
 * The marks that headings of a page are reached by.
 *
 * @example
 * marksIn('## Try it now'); // ['try-it-now']
 */
export function marksIn(page: string): string[] {
  const prose = page.replaceAll(/^```\w*\n.*?^```$/gms, '');
  return [...prose.matchAll(/^#+ (.+)$/gm)].map(([, heading = '']) =>
    heading
      .toLowerCase()
      .replace(/[^\p{L}\p{N} _-]/gu, '')
      .replaceAll(' ', '-'),
  );
}
