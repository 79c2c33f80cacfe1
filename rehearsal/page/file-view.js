// @ts-check
/** @import { FileView } from '../phone-api/views.ts' */
import { api } from './api.js';
import { h } from './dom.js';
import { fileSize, spokenLength } from './words.js';

/** Kinds of documents a browser shows by itself; the rehearsal sends no others to be shown. */
const SHOWN_TYPES = ['image/png', 'image/jpeg', 'application/pdf'];

/**
 * A picture to be enlarged with a tap.
 *
 * @param {FileView} photo
 * @param {string} caption
 * @param {(address: string, description: string) => void} enlarge
 */
export function picture(photo, caption, enlarge) {
  const address = api.fileAddress(photo.fileId);
  const description = caption === '' ? 'Picture' : `Picture: ${caption}`;
  const { width, height } = photo;
  return h(
    'button',
    {
      type: 'button',
      class: 'thumbnail',
      'aria-label': `Enlarge. ${description}`,
      onclick: () => enlarge(address, description),
    },
    h('img', { src: address, alt: description, width, height }),
  );
}

/**
 * A video or a sound with the browser's own pause and seek bar, or a link to save it when the browser cannot play it.
 *
 * @param {'video' | 'voice note'} kind
 * @param {FileView} file
 * @param {string} caption
 */
export function player(kind, file, caption) {
  const { width, height, duration = 0 } = file;
  const title = kind === 'video' ? 'Video' : 'Voice note';
  // The length of a sound the rehearsal cannot read is given as 0.
  const length = duration === 0 ? '' : `, ${spokenLength(duration)}`;
  const giveUp = () => {
    const words = `This browser cannot play the ${kind}. `;
    element.replaceWith(h('p', { class: 'file' }, words, saveLink(file, kind)));
  };
  const attributes = {
    src: api.fileAddress(file.fileId),
    controls: true,
    preload: 'metadata',
    class: 'player',
    'aria-label': `${title}${length}${caption === '' ? '' : `: ${caption}`}`,
    onerror: giveUp,
  };
  /** @type {HTMLMediaElement} */
  const element =
    kind === 'video'
      ? h('video', { ...attributes, playsinline: true, width, height })
      : h('audio', attributes);
  return element;
}

/**
 * @param {FileView} file
 * @param {string} name used when the file has none
 */
function saveLink(file, name) {
  const shown = file.fileName ?? name;
  return h('a', { href: api.fileAddress(file.fileId), download: shown }, `Save ${shown}`);
}

/**
 * A file that opens in a new tab where the browser can show it, a picture with a preview; every file can be saved.
 *
 * @param {FileView} file
 */
export function fileEntry(file) {
  const { width, height, fileName = 'file', mimeType, size } = file;
  const save = [saveLink(file, 'recording'), ` ${fileSize(size)}`];
  if (!SHOWN_TYPES.includes(mimeType)) return h('p', { class: 'file' }, ...save);
  const address = api.fileAddress(file.fileId);
  const preview =
    width !== undefined && h('img', { src: address, alt: `Picture: ${fileName}`, width, height });
  const open = h(
    'a',
    { href: address, target: '_blank', rel: 'noopener', class: preview ? 'preview' : undefined },
    preview,
    h('span', {}, `Open ${fileName} in a new tab`),
  );
  return h('div', { class: 'file' }, open, h('p', {}, ...save));
}
