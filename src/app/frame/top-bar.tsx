// The top bar: name, the design, undo and redo, designs and files, units and light.

import { lazy, type ReactNode, Suspense, useEffect, useRef, useState } from 'react';
import type { Standing } from '../../assess/index.ts';
import { fieldRecord } from '../../design/index.ts';
import type { UnitView } from '../../quantities/index.ts';
import { DesignField } from '../fields/design-field.tsx';
import { type Demo, firstDemo, loadDemos } from '../state/demos.ts';
import { Choice } from '../ui/choice.tsx';
import type { LightChoice } from '../ui/light.tsx';
import { printPage } from '../ui/print-page.ts';
import { StateMark } from '../ui/state-mark.tsx';
import { Brand, RedoSign, UndoSign } from './icons.tsx';
import { StandingMark } from './standing.tsx';

export interface TopBarProps {
  readonly designName: string;
  readonly standing: Standing | undefined;
  /** The engine has no answer for the open design. */
  readonly isRefused: boolean;
  /** How many findings are to be looked at. */
  readonly looks: number;
  readonly canUndo: boolean;
  readonly canRedo: boolean;
  readonly undo: () => void;
  readonly redo: () => void;
  readonly startOwn: () => void;
  readonly openDemo: (demo: Demo) => void;
  readonly openFile: (file: File) => void;
  readonly saveFile: () => void;
  readonly openText: (text: string, name: string) => void;
  readonly openLink: (link: string) => void;
  /** Of the open design. */
  readonly text: string;
  readonly view: UnitView;
  readonly chooseView: (view: UnitView) => void;
  readonly light: LightChoice;
  readonly chooseLight: (light: LightChoice) => void;
  /** Why the open design is not kept in this browser, after "not kept"; undefined where it is. */
  readonly notKept: string | undefined;
}

export function TopBar(props: TopBarProps): ReactNode {
  return (
    <header className="top">
      <div className="top-inner">
        <h1 className="brand-title">
          <Brand />
        </h1>
        <p className="design-name" title={props.designName}>
          {props.notKept !== undefined && `Not kept ${props.notKept} · `}
          {props.designName}
        </p>
        {(props.isRefused || props.standing !== undefined) && (
          <p className="top-standing">
            {props.standing === undefined ? (
              <StateMark kind="stop" word="No answer" />
            ) : (
              <StandingMark standing={props.standing} looks={props.looks} />
            )}
          </p>
        )}
        <div className="tools">
          <button type="button" className="plain icon" disabled={!props.canUndo} onClick={props.undo} aria-label="Undo">
            <UndoSign />
          </button>
          <button type="button" className="plain icon" disabled={!props.canRedo} onClick={props.redo} aria-label="Redo">
            <RedoSign />
          </button>
          <button type="button" className="solid strong" onClick={props.startOwn}>
            Start my own
          </button>
          <DesignMenu {...props} />
          <Menu label="View">
            <Choice
              legend="Units shown"
              value={props.view}
              options={[
                ['metric', 'Metric'],
                ['us', 'US'],
              ]}
              choose={props.chooseView}
            />
            <Choice
              legend="Light"
              value={props.light}
              options={[
                ['system', 'As the system'],
                ['light', 'Light'],
                ['dark', 'Dark'],
              ]}
              choose={props.chooseLight}
            />
            <button type="button" className="plain" onClick={() => void printPage()}>
              Print this page
            </button>
          </Menu>
        </div>
      </div>
    </header>
  );
}

// Not needed before the menu is opened.
const LinkTools = lazy(() => import('../links/link-tools.tsx').then((part) => ({ default: part.LinkTools })));
const SetAsideList = lazy(() =>
  import('../keeping/set-aside-list.tsx').then((part) => ({ default: part.SetAsideList })),
);

/** The design's own name and note. */
const nameFields = ['name', 'note'].flatMap((path) => fieldRecord(path) ?? []);

function DesignMenu(props: TopBarProps): ReactNode {
  const [demos, setDemos] = useState<readonly Demo[]>([firstDemo]);
  const file = useRef<HTMLInputElement>(null);
  const [times, setTimes] = useState(0);
  const opened = () => {
    void loadDemos().then(setDemos);
    setTimes(times + 1);
  };
  return (
    <Menu label="Designs" opened={opened}>
      {(close) => (
        <>
          <div className="tools">
            <input
              ref={file}
              type="file"
              accept=".json,application/json"
              className="for-reader"
              tabIndex={-1}
              aria-label="Design file"
              onChange={(event) => {
                const chosen = event.target.files?.[0];
                event.target.value = '';
                if (chosen !== undefined) props.openFile(chosen);
                close();
              }}
            />
            <button type="button" className="plain" onClick={() => file.current?.click()}>
              Open a file
            </button>
            <button
              type="button"
              className="plain"
              onClick={() => {
                props.saveFile();
                close();
              }}
            >
              Save to a file
            </button>
          </div>
          {times > 0 && (
            <Suspense>
              <LinkTools
                key={`links ${times}`}
                text={props.text}
                openLink={(link) => {
                  close();
                  props.openLink(link);
                }}
              />
              <SetAsideList key={`set aside ${times}`} openText={props.openText} close={close} />
            </Suspense>
          )}
          <div>
            <h2>Open an invented example</h2>
            <ul className="menu-list">
              {demos.map((demo) => (
                <li key={demo.file}>
                  <button
                    type="button"
                    onClick={() => {
                      close();
                      props.openDemo(demo);
                    }}
                  >
                    <span>{demo.name}</span>
                    {demo.note !== undefined && <span className="quiet">{demo.note}</span>}
                  </button>
                </li>
              ))}
            </ul>
          </div>
          <div className="fields">
            {nameFields.map((record) => (
              <DesignField key={record.path} record={record} />
            ))}
          </div>
          <p className="quiet">
            {props.notKept === undefined
              ? 'The open design is also kept in this browser, and nowhere else.'
              : `The open design is not kept ${props.notKept}.`}
          </p>
        </>
      )}
    </Menu>
  );
}

interface MenuProps {
  readonly label: string;
  readonly opened?: () => void;
  readonly children: ReactNode | ((close: () => void) => ReactNode);
}

/** A disclosure that closes when the person goes elsewhere or presses Escape. */
function Menu({ label, opened, children }: MenuProps): ReactNode {
  const menu = useRef<HTMLDetailsElement>(null);
  const close = () => {
    if (menu.current !== null) menu.current.open = false;
  };
  useEffect(() => {
    const outside = (event: Event) => {
      const element = menu.current;
      if (element?.open && !element.contains(event.target as Node)) element.open = false;
    };
    document.addEventListener('pointerdown', outside);
    document.addEventListener('focusin', outside);
    return () => {
      document.removeEventListener('pointerdown', outside);
      document.removeEventListener('focusin', outside);
    };
  }, []);
  return (
    <details
      className="menu"
      ref={menu}
      onToggle={(event) => event.currentTarget.open && opened?.()}
      onKeyDown={(event) => {
        if (event.key !== 'Escape') return;
        close();
        menu.current?.querySelector('summary')?.focus();
      }}
    >
      <summary>{label}</summary>
      <div className="menu-body">{typeof children === 'function' ? children(close) : children}</div>
    </details>
  );
}
