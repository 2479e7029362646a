// The section drawn: zones, layers by their patterns and numbers, breaks, the temperature as a line, the dew point across what
// the room's air touches, and drops where water settles. The table beside it says the same.

import type { ReactNode } from 'react';
import type { PanelAnswer } from '../../assess/index.ts';
import type { UnitView } from '../../quantities/index.ts';
import { say } from '../ui/say.ts';
import { levelOf, type Section, type SectionZone } from './section.ts';
import { beyondWords, insideWords } from './words.ts';

export interface SectionPictureProps {
  readonly panel: PanelAnswer;
  readonly section: Section;
  readonly view: UnitView;
}

/** Of the zones, and of the words above and below them [px]. */
const zoneHeight = 172;
const above = 22;
const below = 22;

export function SectionPicture({ panel, section, view }: SectionPictureProps): ReactNode {
  const { zones, dewPoint } = section;
  const width = zones.at(-1)!.right;
  const level = (temperature: number) => above + levelOf(temperature, section, zoneHeight);
  const outerFace = zones.find(({ kind }) => kind === 'outerFilm')!;
  const numbers = numbersOf(zones);
  return (
    <svg
      className="section-picture"
      width={width}
      height={above + zoneHeight + below}
      aria-hidden="true"
      focusable="false"
    >
      <LayerPatterns />
      {zones.map((zone) => (
        <Zone
          key={zone.left}
          zone={zone}
          isWater={panel.waterFilmResistance > 0}
          number={numbers.get(zone)}
          view={view}
        />
      ))}
      <path d={profilePath(zones, level)} className="section-profile" />
      {dewPoint !== undefined && (
        <line x1={outerFace.left} x2={width} y1={level(dewPoint)} y2={level(dewPoint)} className="section-dew" />
      )}
      {panel.condenses && <Drops x={outerFace.left + 5} y={level(panel.outerTemperature)} />}
      <text x={4} y={15} className="section-word">
        {insideWords(panel)}
      </text>
      <text x={width - 4} y={15} textAnchor="end" className="section-word">
        {beyondWords(panel)}
      </text>
      <Levels panel={panel} section={section} level={level} width={width} view={view} />
    </svg>
  );
}

/** Layers are counted from the water outwards. */
function numbersOf(zones: readonly SectionZone[]): ReadonlyMap<SectionZone, number> {
  return new Map(zones.filter(({ kind }) => kind === 'layer').map((zone, index) => [zone, index + 1]));
}

interface ZoneProps {
  readonly zone: SectionZone;
  readonly isWater: boolean;
  readonly number: number | undefined;
  readonly view: UnitView;
}

function Zone({ zone, isWater, number, view }: ZoneProps): ReactNode {
  const { kind, left, right, layer, isBroken } = zone;
  const wide = right - left;
  const isInside = kind === 'inside' || kind === 'innerFilm';
  const look = layer === undefined ? (isInside && isWater ? 'water' : 'air') : layer.kind;
  const thickness = layer?.thickness == null ? undefined : say(layer.thickness, 'length', view, 2);
  return (
    <g>
      <rect x={left} y={above} width={wide} height={zoneHeight} className={`section-zone section-${look}`} />
      {layer !== undefined && (
        <>
          <path
            d={`M${left} ${above}V${above + zoneHeight}M${right} ${above}V${above + zoneHeight}`}
            className="section-edge"
          />
          <text x={(left + right) / 2} y={above + zoneHeight - 7} textAnchor="middle" className="section-number">
            {number}
          </text>
          {thickness !== undefined && thickness.length * 6.6 < wide + 8 && (
            <text x={(left + right) / 2} y={above + zoneHeight + 15} textAnchor="middle" className="section-word">
              {thickness}
            </text>
          )}
        </>
      )}
      {isBroken && <Break x={(left + right) / 2} />}
      {(kind === 'innerFilm' || kind === 'outerFilm') && (
        <path
          d={
            kind === 'innerFilm'
              ? `M${left} ${above}V${above + zoneHeight}`
              : `M${right} ${above}V${above + zoneHeight}`
          }
          className="section-film"
        />
      )}
    </g>
  );
}

/** Two zigzags with nothing between them: part of the layer is left out. */
function Break({ x }: { readonly x: number }): ReactNode {
  const steps = 12;
  const zigzag = Array.from({ length: steps + 1 }, (_, index): readonly [number, number] => [
    index % 2 === 0 ? -3 : 3,
    above + (index * zoneHeight) / steps,
  ]);
  const line = (offset: number, points: readonly (readonly [number, number])[]) =>
    points.map(([dx, y]) => `${(x + offset + dx).toFixed(1)} ${y.toFixed(1)}`).join('L');
  return (
    <>
      <path d={`M${line(-4, zigzag)}L${line(4, zigzag.toReversed())}Z`} className="section-gone" />
      <path d={`M${line(-4, zigzag)}M${line(4, zigzag)}`} className="section-break" />
    </>
  );
}

/** Straight through layers, bent through films, level in what is well mixed. */
function profilePath(zones: readonly SectionZone[], level: (temperature: number) => number): string {
  return zones
    .map(({ kind, left, right, from, to }, index) => {
      const start = index === 0 ? `M${left} ${level(from)}` : '';
      if (kind === 'innerFilm') return `${start}Q${right - 2} ${level(from)} ${right} ${level(to)}`;
      if (kind === 'outerFilm') return `${start}Q${left + 4} ${level(to)} ${right} ${level(to)}`;
      return `${start}L${right} ${level(to)}`;
    })
    .join('');
}

interface LevelsProps extends SectionPictureProps {
  readonly level: (temperature: number) => number;
  readonly width: number;
}

/** The temperatures that matter, written where they stand; at the right side two of them keep apart. */
function Levels({ panel, section, level, width, view }: LevelsProps): ReactNode {
  const { dewPoint } = section;
  const sink = level(panel.sinkTemperature);
  const dew = dewPoint === undefined ? undefined : level(dewPoint);
  const isDewBelow = dew === undefined || dew >= sink;
  return (
    <>
      <text x={4} y={level(panel.insideTemperature) + 15} className="section-level">
        {say(panel.insideTemperature, 'temperature', view)}
      </text>
      <text x={width - 4} y={sink + (isDewBelow ? -5 : 14)} textAnchor="end" className="section-level">
        {say(panel.sinkTemperature, 'temperature', view)}
      </text>
      {dew !== undefined && dewPoint !== undefined && (
        <text
          x={width - 4}
          y={dew + (isDewBelow ? 14 : -5)}
          textAnchor="end"
          className="section-level section-level-dew"
        >
          dew {say(dewPoint, 'temperature', view)}
        </text>
      )}
    </>
  );
}

function Drops({ x, y }: { readonly x: number; readonly y: number }): ReactNode {
  return (
    <g className="section-drops">
      {[-22, 0, 22].map((down) => (
        <path key={down} d={`M${x} ${y + down - 6}q5 7 0 11q-5 -4 0 -11Z`} />
      ))}
    </g>
  );
}

function LayerPatterns(): ReactNode {
  return (
    <defs>
      <pattern id="section-gap" width="8" height="8" patternUnits="userSpaceOnUse">
        <rect width="8" height="8" fill="var(--sheet)" />
        <circle cx="4" cy="4" r="1" fill="var(--neutral)" />
      </pattern>
      <pattern id="section-wave" width="10" height="8" patternUnits="userSpaceOnUse">
        <rect width="10" height="8" fill="var(--sheet)" />
        <path d="M0 4h10" stroke="var(--faint)" strokeWidth="1.5" />
      </pattern>
      <pattern id="section-known" width="8" height="8" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
        <rect width="8" height="8" fill="var(--grid)" />
        <rect width="1.5" height="8" fill="var(--neutral)" />
      </pattern>
    </defs>
  );
}
