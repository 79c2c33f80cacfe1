import { readFile } from 'node:fs/promises';
import type { z } from 'zod';
import { type ClassFile, classFile } from '../../db/index.ts';
import { cleanNickname, lengthOf, NICKNAME_LENGTH } from '../input/nickname.ts';
import { readRoster } from '../input/roster.ts';
import { OperatorError } from '../roots/failure.ts';

/** A class has 40 children and some hundred evenings each at most; a file beyond this is none of ours. */
const MOST_BYTES = 200_000_000;

/** Reads a class from a JSON file, its nicknames cleaned. @throws {OperatorError} that says what to mend where. */
export async function readClassFile(file: string): Promise<ClassFile> {
  const parsed = classFile.safeParse(await readJson(file));
  if (!parsed.success) {
    const problems = parsed.error.issues.map((issue) => `${where(issue)}: ${issue.message}`);
    throw new OperatorError(
      `${file} cannot be taken; nothing was changed.\n${problems.join('\n')}`,
    );
  }
  const children = parsed.data.children.map((each) => {
    return { ...each, nickname: cleanNickname(each.nickname) };
  });
  const problems = nicknameProblems(children);
  if (problems.length > 0) {
    throw new OperatorError(
      `${file} cannot be taken; nothing was changed.\n${problems.join('\n')}`,
    );
  }
  return { ...parsed.data, children };
}

async function readJson(file: string): Promise<unknown> {
  const text = await readFile(file, 'utf8').catch(() => {
    throw new OperatorError(`Cannot read ${file}. Is the name right, and may you read it?`);
  });
  if (text.length > MOST_BYTES) throw new OperatorError(`${file} is too big for a class file.`);
  try {
    return JSON.parse(text);
  } catch {
    throw new OperatorError(
      `${file} is not JSON. Take a file that “suppersums export --class” wrote, or one like it; a list of names alone goes to the bot, as the teacher’s XLSX or CSV file.`,
    );
  }
}

function where({ path }: z.core.$ZodIssue): string {
  return path.length === 0 ? 'the file' : path.join('.');
}

function nicknameProblems(children: ClassFile['children']): string[] {
  const here = children.flatMap(({ nickname, archivedAt }, at) =>
    archivedAt ? [] : [{ raw: nickname, line: at }],
  );
  const empty = here.filter(({ raw }) => raw === '');
  const { problems } = readRoster(here, []);
  return [
    ...empty.map(({ line }) => `children.${line}: has no nickname`),
    ...problems.map(({ kind, line, value }) =>
      kind === 'long'
        ? `children.${line}: “${value}” has ${lengthOf(value)} characters; at most ${NICKNAME_LENGTH} are possible`
        : `children.${line}: “${value}” comes twice; each child needs a nickname of its own`,
    ),
  ];
}
