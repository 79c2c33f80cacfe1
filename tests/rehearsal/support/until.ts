const TRIES = 2000;

/** Asks over and over until the answer is the one wanted. Throws after many tries, naming the last answer. */
export async function until<T>(
  ask: () => Promise<T>,
  isWanted: (answer: T) => boolean,
): Promise<T> {
  let last: T | undefined;
  for (let i = 0; i < TRIES; i += 1) {
    last = await ask();
    if (isWanted(last)) return last;
  }
  throw new Error(`still ${JSON.stringify(last)} after ${TRIES} tries`);
}
