// @ts-check

const PLAYER = 'video, audio';

/** @param {Element} entry */
function playerIn(entry) {
  const player = entry.querySelector(PLAYER);
  return player instanceof HTMLMediaElement ? player : null;
}

/**
 * Puts an entry in the place of its older drawing. A video or sound both of them show is moved over, so that it neither jumps back to
 * its beginning nor is loaded again, and goes on when it was playing.
 *
 * @param {Element} old
 * @param {HTMLElement} fresh
 */
export function keepPlayer(old, fresh) {
  const before = playerIn(old);
  const after = playerIn(fresh);
  const isSame = before && after && before.getAttribute('src') === after.getAttribute('src');
  const wasPlaying = before !== null && !before.paused;
  if (isSame) {
    before.setAttribute('aria-label', after.getAttribute('aria-label') ?? '');
    after.replaceWith(before);
  }
  old.replaceWith(fresh);
  // Leaving the page for a moment pauses a video. The browser may refuse to go on; then it stays paused.
  if (isSame && wasPlaying) before.play().catch(() => {});
}
