/** A strip of a page: its height in points, and its shapes when its top is at `y`. */
export interface Strip {
  readonly height: number;
  draw(y: number): string;
}

/** Strips that stay together where a page has room for them all; the first is a heading and never ends a page. */
export type Group = readonly Strip[];

/** From where to where, in points from the top of a page, strips may stand. */
export interface Column {
  readonly top: number;
  readonly bottom: number;
  /** Space between two groups. */
  readonly gap: number;
}

/**
 * Sets groups under one another over as many pages as they need; returns each page's shapes. A group taller than a page breaks
 * between its strips. A single strip taller than a page is the caller's mistake and sticks out.
 *
 * @example
 * flow([[strip], [strip]], { top: 0, bottom: 10, gap: 0 }).length; // => 2 for strips 8 points high
 */
export function flow(groups: readonly Group[], { top, bottom, gap }: Column): string[] {
  const pages: string[] = [''];
  let y = top;
  const turnPage = () => {
    pages.push('');
    y = top;
  };
  for (const group of groups) {
    const height = group.reduce((sum, strip) => sum + strip.height, 0);
    const fitsHere = y + height <= bottom;
    const fitsAlone = top + height <= bottom;
    if (!fitsHere && y > top && (fitsAlone || y + leadOf(group) > bottom)) turnPage();
    for (const [i, strip] of group.entries()) {
      const needed = i === 0 ? leadOf(group) : strip.height;
      if (y + needed > bottom && y > top) turnPage();
      pages[pages.length - 1] += strip.draw(y);
      y += strip.height;
    }
    y += gap;
  }
  return pages;
}

/** A heading with what comes right after it. */
function leadOf([heading, next]: Group): number {
  return (heading?.height ?? 0) + (next?.height ?? 0);
}
