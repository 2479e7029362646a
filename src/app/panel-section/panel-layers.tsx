// What can be changed of the chosen panel: its layers as lists from the water outwards, its own pane and surroundings, and links to
// what it shares with others, which stands among the inputs.

import type { ReactNode } from 'react';
import { addItem, type DesignDocument, fieldsOf, removeItem } from '../../design/index.ts';
import { Fields } from '../fields/fields.tsx';
import { ListFields } from '../fields/list-fields.tsx';
import { useWorkbench } from '../state/context.tsx';
import { PageLink } from '../ui/page-link.tsx';
import { facesList, placeInDesign, sharedBeginnings } from './place-in-design.ts';

export interface PanelLayersProps {
  readonly vessel: string;
  readonly panel: string;
}

const outwards = ['Move towards the water', 'Move outwards'] as const;

export function PanelLayers({ vessel, panel }: PanelLayersProps): ReactNode {
  const { document } = useWorkbench();
  const place = placeInDesign(document, vessel, panel);
  return (
    <div className="panel-layers">
      {place?.kind === 'face' && <FaceLayers face={panel} path={place.path} isThere={place.isThere} />}
      {place?.kind === 'piece' && <OwnParts path={place.path} />}
      {place?.kind === 'lid' && <ListFields list={place.path} directions={outwards} />}
      <SharedFields document={document} beginnings={sharedBeginnings(document, vessel, panel)} />
    </div>
  );
}

/** A face is in the design only where it has something of its own: the first layer brings it there. */
function FaceLayers({
  face,
  path,
  isThere,
}: {
  readonly face: string;
  readonly path: string;
  readonly isThere: boolean;
}) {
  const { document, edit } = useWorkbench();
  if (isThere) {
    const index = Number(path.slice(facesList.length + 1));
    return (
      <>
        <OwnParts path={path} />
        <p>
          <button
            type="button"
            className="plain"
            onClick={() => edit(removeItem(document, facesList, index), facesList)}
          >
            Let it be as the other faces
          </button>
        </p>
      </>
    );
  }
  const begin = (parts: object) => addItem(document, facesList, { face, ...parts });
  return (
    <>
      <ListFields list={`${path}.inside`} directions={outwards} add={(item) => begin({ inside: [item] })} />
      <ListFields list={`${path}.outside`} directions={outwards} add={(item) => begin({ outside: [item] })} />
      <p>
        <button type="button" className="plain" onClick={() => edit(begin({}), facesList)}>
          Give it a pane or surroundings of its own
        </button>
      </p>
    </>
  );
}

/** Layers in the water, the pane, layers outside, and what lies beyond, of a face or piece that is in the design. */
function OwnParts({ path }: { readonly path: string }): ReactNode {
  const { document } = useWorkbench();
  const own = (part: string) => fieldsOf(document).filter((record) => record.path.startsWith(`${path}.${part}.`));
  return (
    <>
      <ListFields list={`${path}.inside`} directions={outwards} />
      <Fields records={own('wall')} />
      <ListFields list={`${path}.outside`} directions={outwards} />
      <Fields records={own('exposure')} />
    </>
  );
}

interface SharedFieldsProps {
  readonly document: DesignDocument;
  readonly beginnings: readonly string[];
}

/** Links into the inputs that this panel shares with others. */
function SharedFields({ document, beginnings }: SharedFieldsProps): ReactNode {
  const shared = fieldsOf(document).filter(
    ({ path, item }) => item === undefined && beginnings.some((begin) => path.startsWith(begin)),
  );
  if (shared.length === 0) return null;
  return (
    <p className="quiet">
      Among the inputs:{' '}
      {shared.map(({ path, label }, index) => (
        <span key={path}>
          {index > 0 && ' · '}
          <PageLink page="what-leaves" part={path}>
            {label}
          </PageLink>
        </span>
      ))}
    </p>
  );
}
