// @ts-check
/** @import { FileKind } from './api.js' */
import { h } from './dom.js';

/** How a file can be sent, and what the person chooses from. @type {readonly [FileKind, string][]} */
const KINDS = [
  ['document', 'a document'],
  ['photo', 'a photo'],
  ['video', 'a video'],
  ['voice', 'a voice note'],
];

/**
 * How a file is sent unless the person chooses otherwise.
 *
 * @param {string} mimeType as the browser tells it; empty when it does not know
 * @param {string} name
 * @returns {FileKind}
 */
export function usualKind(mimeType, name) {
  if (mimeType.startsWith('audio/') || /\.(?:ogg|oga|opus)$/i.test(name)) return 'voice';
  if (mimeType === 'image/jpeg' || mimeType === 'image/png') return 'photo';
  return mimeType === 'video/mp4' ? 'video' : 'document';
}

/**
 * A form that sends a file from this computer to the bot. Keeps what was chosen when sending was refused.
 *
 * @param {string} place makes ids unique when several phones are shown
 * @param {(file: File, kind: FileKind, caption: string) => Promise<boolean>} send
 */
export function fileSender(place, send) {
  const file = h('input', { id: `file-${place}`, type: 'file', required: true });
  const kind = h(
    'select',
    { id: `kind-${place}` },
    ...KINDS.map(([value, words]) => h('option', { value }, words)),
  );
  const caption = h('input', { id: `caption-${place}`, autocomplete: 'off', maxlength: 1024 });
  file.addEventListener('change', () => {
    const chosen = file.files?.[0];
    if (chosen) kind.value = usualKind(chosen.type, chosen.name);
  });
  /** @type {HTMLFormElement} */
  const form = h(
    'form',
    {
      class: 'fields',
      onsubmit: async (event) => {
        event.preventDefault();
        const chosen = file.files?.[0];
        const [way] = KINDS.find(([value]) => value === kind.value) ?? ['document'];
        if (chosen && (await send(chosen, way, caption.value.trim()))) form.reset();
      },
    },
    h('label', { for: file.id }, 'File'),
    file,
    h('label', { for: kind.id }, 'Send it as'),
    kind,
    h('label', { for: caption.id }, 'Words with it'),
    caption,
    h('button', {}, 'Send the file'),
  );
  return h('details', {}, h('summary', {}, 'Send a file'), form);
}
