// @ts-check
/** @import { Entity } from '../state.ts' */
import { h } from './dom.js';

/** @type {ReadonlyMap<string, 'strong' | 'em' | 'u' | 's' | 'code' | 'q' | 'mark'>} */
const TAGS = new Map([
  ['bold', 'strong'],
  ['italic', 'em'],
  ['underline', 'u'],
  ['strikethrough', 's'],
  ['code', 'code'],
  ['pre', 'code'],
  ['blockquote', 'q'],
  ['expandable_blockquote', 'q'],
  ['spoiler', 'mark'],
]);

/**
 * Text with its entities as elements. Text is cut wherever an entity begins or ends, so overlapping
 * entities need no nesting.
 *
 * @param {string} text
 * @param {readonly Entity[]} entities
 * @param {(label: string, url: string) => Node} showLink
 * @returns {Node[]}
 */
export function richText(text, entities, showLink) {
  const cuts = new Set([0, text.length]);
  for (const { offset, length } of entities) cuts.add(offset).add(offset + length);
  const ordered = [...cuts].sort((a, b) => a - b);
  return ordered.slice(0, -1).map((from, i) => {
    const to = ordered[i + 1] ?? text.length;
    const covering = entities.filter(
      ({ offset, length }) => offset <= from && offset + length >= to,
    );
    return piece(text.slice(from, to), covering, showLink);
  });
}

/**
 * @param {string} text
 * @param {readonly Entity[]} entities
 * @param {(label: string, url: string) => Node} showLink
 * @returns {Node}
 */
function piece(text, entities, showLink) {
  const link = entities.find(({ type }) => type === 'url' || type === 'text_link');
  /** @type {Node} */
  let node = link ? showLink(text, link.url ?? text) : document.createTextNode(text);
  for (const { type } of entities) {
    const tag = TAGS.get(type);
    if (tag) node = h(tag, {}, node);
  }
  return node;
}
