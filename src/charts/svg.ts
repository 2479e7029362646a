// A chart as a still picture: the text of one SVG document that needs nothing beside itself. Colours are those for paper;
// the caution is part of the picture. Pure: widths of words are estimated, since nothing here can measure letters.

import { InputError } from '../numerics/index.ts';
import type { ChartSpecification } from './specification.ts';
import { drawFrame, frameOf } from './still/frame.ts';
import { limitMark, seriesMark, stroke } from './still/marks.ts';
import { letters, paper, paperInks, sizes } from './still/paper.ts';
import { down, drawnEnds, type PlacedChart, type Plot, placedChart } from './still/plane.ts';
import { escapeMarkup, short, textElement, textWidth } from './still/text.ts';
import { wordsOnChart } from './words.ts';

export interface SvgOptions {
  /** Size of the picture [px]. Words are 3 mm high letters where 720 px are printed 180 mm wide. */
  readonly width: number;
  readonly height: number;
  /** Stands above the picture; the chart's own title where absent. */
  readonly title?: string;
}

/**
 * The text of an SVG document, without an XML declaration, so that it can stand in a page as well as in a file.
 * @param chart    what is drawn, in the units of its view
 * @param options  size, and another title
 * @throws InputError for numbers that are not finite or have no place on their axis, and for a picture too small for its words
 */
export function chartSvg(chart: ChartSpecification, options: SvgOptions): string {
  const { width, height, title = chart.title } = options;
  if (!(Number.isFinite(width) && Number.isFinite(height))) {
    throw new InputError('options', `${width} by ${height}`, 'a finite width and height');
  }
  const placed = placedChart(chart);
  const frame = frameOf(placed, title, { width, height });
  const { plot } = frame;
  const size = `width="${short(plot.width)}" height="${short(plot.height)}"`;
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${short(width)} ${short(height)}" width="${short(width)}" height="${short(height)}" role="img" font-family="${letters}">`,
    `<title>${escapeMarkup(title)}</title>`,
    `<desc>${escapeMarkup(chart.description)}</desc>`,
    `<rect width="${short(width)}" height="${short(height)}" fill="${paper.sheet}"/>`,
    drawFrame(placed, frame, { width, height }),
    `<svg x="${short(plot.left)}" y="${short(plot.top)}" ${size} viewBox="0 0 ${short(plot.width)} ${short(plot.height)}" overflow="hidden">`,
    ...placed.limits.map((limit) => limitMark(limit, placed, plot)),
    ...placed.series.map((series) => seriesMark(series, placed, plot)),
    ...placed.levels.map((level) => levelMark(down(level.y, placed, plot), paperInks[level.ink], plot)),
    words(placed, plot),
    '</svg>',
    '</svg>',
  ].join('\n');
}

function levelMark(y: number, ink: string, plot: Plot): string {
  return `<path d="M0 ${short(y)}H${short(plot.width)}" ${stroke(ink, 1.5, 'longdash')}/>`;
}

/** On a small piece of paper of their own, so that the lines do not run through them. */
function words(chart: PlacedChart, plot: Plot): string {
  const x = drawnEnds(chart.x);
  const y = drawnEnds(chart.y);
  const drawn = { width: plot.width, height: plot.height, x, y, fontSize: sizes.words };
  return wordsOnChart(chart, drawn, textWidth)
    .map((word) => {
      const middle = {
        x: ((word.x - x[0]) / (x[1] - x[0])) * plot.width,
        y: ((y[1] - word.y) / (y[1] - y[0])) * plot.height,
      };
      const width = textWidth(word.text, word.size);
      const under = word.bold
        ? ''
        : `<rect x="${short(middle.x - width / 2)}" y="${short(middle.y - 0.55 * word.size)}" width="${short(width)}" height="${short(1.1 * word.size)}" fill="${paper.sheet}"/>`;
      const text = textElement(word.text, {
        ...middle,
        size: word.size,
        ink: paperInks[word.ink],
        anchor: 'middle',
        bold: word.bold,
      });
      return `${under}${text}`;
    })
    .join('');
}
