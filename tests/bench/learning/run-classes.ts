import { type ChildProcess, fork } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import type { ClassOutcome, ClassTerm } from './class-term.ts';

interface Answer {
  readonly at: number;
  readonly outcome: ClassOutcome;
}

/**
 * Simulates classes in so many processes at once. Results come in the order of the terms whichever process was quicker, so that
 * two runs print the same. Rejects when a process ends before its work.
 */
export async function runClasses(
  terms: readonly ClassTerm[],
  workers: number,
): Promise<readonly ClassOutcome[]> {
  const outcomes: ClassOutcome[] = [];
  let next = 0;
  const takeOne = () => {
    const at = next;
    next += 1;
    return { at, term: terms[at] };
  };
  const keep = ({ at, outcome }: Answer) => {
    outcomes[at] = outcome;
  };
  const processes = Math.min(workers, terms.length);
  await Promise.all(Array.from({ length: processes }, () => work(takeOne, keep)));
  return outcomes;
}

function work(
  takeOne: () => { at: number; term: ClassTerm | undefined },
  keep: (answer: Answer) => void,
): Promise<void> {
  const child: ChildProcess = fork(fileURLToPath(new URL('worker.ts', import.meta.url)));
  const handOut = () => {
    const { at, term } = takeOne();
    if (term === undefined) child.disconnect();
    else child.send({ at, term });
  };
  return new Promise((resolve, reject) => {
    child.on('message', (answer: Answer) => {
      keep(answer);
      handOut();
    });
    child.on('error', reject);
    child.on('exit', (code) => {
      if (code === 0) resolve();
      else reject(new Error(`a simulating process ended with code ${code}`));
    });
    handOut();
  });
}
