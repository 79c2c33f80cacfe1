// @ts-check

/**
 * "Monday 7 September 2026, 18:30" in the given zone, or the browser's own.
 *
 * @param {Date} instant
 * @param {string | undefined} timeZone
 */
export function longTime(instant, timeZone) {
  const day = new Intl.DateTimeFormat('en-GB', {
    weekday: 'long',
    day: 'numeric',
    month: 'long',
    year: 'numeric',
    timeZone,
  }).format(instant);
  return `${day.replace(',', '')}, ${shortTime(instant, timeZone)}`;
}

/**
 * "18:30".
 *
 * @param {Date} instant
 * @param {string | undefined} timeZone
 */
export function shortTime(instant, timeZone) {
  const options = /** @type {const} */ ({ hour: '2-digit', minute: '2-digit', hourCycle: 'h23' });
  return new Intl.DateTimeFormat('en-GB', { ...options, timeZone }).format(instant);
}

/**
 * "Mon 7 Sept".
 *
 * @param {Date} instant
 * @param {string | undefined} timeZone
 */
export function shortDay(instant, timeZone) {
  const options = /** @type {const} */ ({ weekday: 'short', day: 'numeric', month: 'short' });
  return new Intl.DateTimeFormat('en-GB', { ...options, timeZone })
    .format(instant)
    .replace(',', '');
}

/** @param {number} bytes */
export function fileSize(bytes) {
  return bytes < 1000 ? `${bytes} bytes` : `${(bytes / 1000).toFixed(1)} kB`;
}

/**
 * "1 minute 5 seconds", to be read out.
 *
 * @param {number} seconds whole seconds
 */
export function spokenLength(seconds) {
  /** @param {number} count @param {string} unit */
  const counted = (count, unit) => (count === 1 ? `1 ${unit}` : `${count} ${unit}s`);
  const minutes = Math.floor(seconds / 60);
  if (minutes === 0) return counted(seconds, 'second');
  const rest = seconds % 60;
  return counted(minutes, 'minute') + (rest === 0 ? '' : ` ${counted(rest, 'second')}`);
}
