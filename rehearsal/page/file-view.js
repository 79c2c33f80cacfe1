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
 * A video with the browser's own pause and seek bar, or a link to save it when the browser cannot play it.
 *
 * @param {FileView} video
 * @param {string} caption
 */
export function player(video, caption) {
  const address = api.fileAddress(video.fileId);
  const { width, height, duration = 0 } = video;
  const label = `Video, ${spokenLength(duration)}${caption === '' ? '' : `: ${caption}`}`;
  const giveUp = () => {
    element.replaceWith(
      h('p', { class: 'file' }, 'This browser cannot play the video. ', saveLink(video, 'video')),
    );
  };
  const attributes = { controls: true, playsinline: true, preload: 'metadata', class: 'player' };
  /** @type {HTMLVideoElement} */
  const element = h('video', {
    ...attributes,
    src: address,
    width,
    height,
    'aria-label': label,
    onerror: giveUp,
  });
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
