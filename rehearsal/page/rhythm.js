// @ts-check

const USUAL_MS = 500;
/** After something was done the bot's answer is near. */
const HURRIED_MS = 100;
const HURRY_FOR_MS = 3000;

/**
 * Looks again and again, the next time when the last look has ended; for a while after `hurry` more often.
 *
 * @param {() => Promise<void>} look
 */
export function createRhythm(look) {
  let hurriedUntil = 0;
  /** @type {ReturnType<typeof setTimeout> | undefined} */
  let timer;
  const wait = () => {
    clearTimeout(timer);
    timer = setTimeout(next, performance.now() < hurriedUntil ? HURRIED_MS : USUAL_MS);
  };
  const next = async () => {
    await look().catch(() => {});
    wait();
  };
  return {
    start: () => void next(),
    hurry: () => {
      hurriedUntil = performance.now() + HURRY_FOR_MS;
      wait();
    },
  };
}
