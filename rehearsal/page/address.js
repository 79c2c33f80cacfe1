// @ts-check

/** What follows the # of the page's address names the phones that are shown, so that going back, reloading and bookmarks work. */

/** @returns {number[]} ids of phones, the first one first; empty when the address names none */
export function phonesInAddress() {
  const ids = location.hash.slice(1).split(',').map(Number);
  return [...new Set(ids)].filter((id) => Number.isSafeInteger(id) && id > 0);
}

/** @param {readonly number[]} ids */
export function putInAddress(ids) {
  location.hash = ids.join(',');
}
