// Keeping the open design: never over what another tab keeps, never without the other one set aside; and the start from
// whatever is found.

import { beforeEach, describe, expect, test } from 'vitest';
import { createDesignKeeping } from '../../src/app/keeping/design-keeping.ts';
import { allSetAside, dropSetAside, mostSetAside, setAside } from '../../src/app/keeping/set-aside.ts';
import { startFrom } from '../../src/app/state/start.ts';
import { browserKeeper, changedKey, type Keeper } from '../../src/app/state/storage.ts';
import { stateAtStart } from '../../src/app/state/workbench.ts';
import { parseDesign, serialiseDesign } from '../../src/design/index.ts';
import { exampleText } from './answers.ts';

const now = () => '2026-11-26T12:00:00.000Z';

/** What a browser holds for all tabs, and how much it takes [characters]. */
let kept: Map<string, string>;
let room: number;
let keeper: Keeper;

beforeEach(() => {
  kept = new Map();
  room = Number.POSITIVE_INFINITY;
  keeper = newTab();
});

function newTab(): Keeper {
  const storage = {
    getItem: (key: string) => kept.get(key) ?? null,
    setItem: (key: string, text: string) => {
      if (text.length > room) throw new DOMException('full', 'QuotaExceededError');
      kept.set(key, text);
    },
  } as unknown as Storage;
  return browserKeeper(() => storage);
}

const aside = () => allSetAside(keeper).map(({ text }) => text);

describe('one tab', () => {
  test('keeps each text in place of the one before', () => {
    const keeping = createDesignKeeping(keeper, undefined, now);
    for (const text of ['a', 'b', 'c']) keeping.keep(text);
    expect(keeper.read('design')).toBe('c');
    expect(keeping.theirs()).toBeUndefined();
    expect(aside()).toEqual([]);
  });

  test('kept text that was removed is kept again', () => {
    const keeping = createDesignKeeping(keeper, undefined, now);
    keeping.keep('a');
    kept.clear();
    keeping.otherTabKept(undefined);
    keeping.keep('b');
    expect(keeper.read('design')).toBe('b');
  });
});

describe('two tabs', () => {
  /** Both started from the same kept text; the second has just changed it. */
  function second(changed: string) {
    kept.set('kettlefin.design', 'start');
    const keeping = createDesignKeeping(keeper, 'start', now);
    keeping.keep('start');
    createDesignKeeping(newTab(), 'start', now).keep(changed);
    return keeping;
  }

  test('what the other keeps is told, and nothing is kept over it, whether or not the event came', () => {
    for (const isTold of [true, false]) {
      kept.clear();
      const keeping = second('theirs');
      let told = 0;
      keeping.subscribe(() => (told += 1));
      if (isTold) keeping.otherTabKept('theirs');
      keeping.keep('mine');
      expect(keeping.theirs()).toBe('theirs');
      expect(told).toBe(1);
      keeping.keep('mine still');
      expect(keeper.read('design')).toBe('theirs');
      expect(aside()).toEqual(['mine still']);
    }
  });

  test('the other’s is taken over: it stays kept, this tab’s is set aside, further changes are kept', () => {
    const keeping = second('theirs');
    keeping.otherTabKept('theirs');
    keeping.chooseTheirs();
    keeping.keep('theirs');
    expect(keeping.theirs()).toBeUndefined();
    expect(aside()).toEqual(['start']);
    keeping.keep('theirs, edited');
    expect(keeper.read('design')).toBe('theirs, edited');
  });

  test('this one is kept: the other’s is set aside, further changes are kept', () => {
    const keeping = second('theirs');
    keeping.keep('mine');
    expect(keeping.chooseMine()).toBe(true);
    expect(keeper.read('design')).toBe('mine');
    expect(aside()).toEqual(['theirs']);
    keeping.keep('mine, edited');
    expect(keeper.read('design')).toBe('mine, edited');
    expect(keeping.theirs()).toBeUndefined();
  });

  test('what the other tab has set aside is not replaced as this tab’s design goes on', () => {
    const keeping = second('theirs');
    setAside(newTab(), { why: 'otherTab', at: now(), text: 'start' });
    keeping.otherTabKept('theirs');
    keeping.keep('mine');
    keeping.keep('mine, edited');
    expect(aside()).toEqual(['mine, edited', 'start']);
  });

  test('where the other’s cannot be set aside, nothing is written over it', () => {
    const keeping = second('theirs');
    keeping.otherTabKept('theirs');
    room = 5;
    expect(keeping.chooseMine()).toBe(false);
    expect(keeper.read('design')).toBe('theirs');
    expect(keeping.theirs()).toBe('theirs');
  });

  test('once both have the same design there is nothing to choose', () => {
    const keeping = second('theirs');
    keeping.otherTabKept('theirs');
    keeping.keep('theirs');
    expect(keeping.theirs()).toBeUndefined();
    keeping.otherTabKept('other');
    expect(keeping.theirs()).toBe('other');
    keeping.otherTabKept('theirs');
    expect(keeping.theirs()).toBeUndefined();
  });
});

describe('designs set aside', () => {
  const one = (text: string) => ({ why: 'link', at: now(), text }) as const;

  test('newest first, each once, the newest few stay', () => {
    for (let count = 0; count < mostSetAside + 3; count++) setAside(keeper, one(`design ${count}`));
    setAside(keeper, one('design 9'));
    expect(aside().length).toBe(mostSetAside);
    expect(aside().slice(0, 2)).toEqual(['design 9', `design ${mostSetAside + 2}`]);
    dropSetAside(keeper, 'design 9');
    expect(aside()).not.toContain('design 9');
  });

  test.each(['rubbish', '{}', '[{"why":"link"}]', '[1]'])(
    'a list that cannot be read is itself set aside: %s',
    (text) => {
      keeper.write('set-aside', text);
      expect(allSetAside(keeper)).toEqual([{ why: 'unreadable', at: '', text }]);
      setAside(keeper, one('next'));
      expect(aside()).toEqual(['next', text]);
    },
  );
});

describe('what was refused', () => {
  test('is told with its reason, tried again with the next change, and not over another tab', () => {
    let told = 0;
    keeper.subscribe(() => (told += 1));
    room = 2;
    expect(keeper.write('view', 'metric')).toBe(false);
    expect(keeper.write('design', 'long text')).toBe(false);
    expect([...keeper.refused()]).toEqual([
      ['view', 'full'],
      ['design', 'full'],
    ]);
    expect(told).toBe(2);
    room = 100;
    kept.set('kettlefin.design', 'of another tab');
    keeper.write('light', 'dark');
    expect(keeper.read('view')).toBe('metric');
    expect(keeper.read('design')).toBe('of another tab');
    expect([...keeper.refused().keys()]).toEqual(['design']);
    keeper.write('design', 'newer');
    expect(keeper.refused().size).toBe(0);
  });

  test('another program’s keys are not ours', () => {
    const event = (key: string | null, newValue: string | null) => ({ key, newValue }) as StorageEvent;
    expect(changedKey(event('kettlefin.design', 'x'))).toEqual(['design', 'x']);
    expect(changedKey(event('kettlefin.design', null))).toEqual(['design', undefined]);
    expect(changedKey(event('other.design', 'x'))).toBeUndefined();
    expect(changedKey(event(null, null))).toBeUndefined();
  });
});

describe('start', () => {
  const reef = exampleText('reef-in-the-study.json');
  const garage = exampleText('frag-tank-cold-garage.json');
  const linked = parseDesign(exampleText('propane-in-the-cabinet.json'));
  if (!linked.ok) throw new Error('the example cannot be read');

  test('from nothing: the example, with nothing to say', () => {
    const start = startFrom(keeper, now());
    expect(serialiseDesign(start.document)).toBe(reef);
    expect(start.notice).toBeUndefined();
    expect(stateAtStart(start).designs.past).toEqual([]);
  });

  test('the first visit takes the units of the browser’s language; later ones those that were kept', () => {
    expect(startFrom(keeper, now(), undefined, 'en-US').view).toBe('us');
    expect(startFrom(keeper, now(), undefined, 'de-DE').view).toBe('metric');
    expect(startFrom(keeper, now(), undefined, 'es-US').view).toBe('metric');
    keeper.write('view', 'metric');
    expect(startFrom(keeper, now(), undefined, 'en-US').view).toBe('metric');
    keeper.write('view', 'us');
    expect(startFrom(keeper, now(), undefined, 'en-GB').view).toBe('us');
  });

  test('from text that cannot be read: it is set aside and offered as a file', () => {
    keeper.write('design', '{"formatVersion": 1, "name": ');
    const start = startFrom(keeper, now());
    expect(start.notice?.title).toContain('set aside');
    expect(start.notice?.offers).toEqual([
      { kind: 'saveText', text: '{"formatVersion": 1, "name": ', name: 'kept-design.json' },
    ]);
    expect(aside()).toEqual(['{"formatVersion": 1, "name": ']);
    expect(start.holdsKept).toBe(false);
  });

  test('from such text in a full storage: nothing may take its place before a change', () => {
    keeper.write('design', 'rubbish');
    room = 3;
    const start = startFrom(keeper, now());
    expect(start.holdsKept).toBe(true);
    expect(start.notice?.title).toContain('save it to a file');
  });

  test('with a link: its design is open, the kept one is one step back and set aside', () => {
    keeper.write('design', garage);
    const start = startFrom(keeper, now(), linked);
    const state = stateAtStart(start);
    expect(state.designs.present).toBe(linked.document);
    expect(state.designs.past.map(serialiseDesign)).toEqual([garage]);
    expect(aside()).toEqual([garage]);
    expect(state.notice?.tone).toBe('note');
  });

  test('with a link and an example, or the same design, nothing is set aside', () => {
    startFrom(keeper, now(), linked);
    keeper.write('design', serialiseDesign(linked.document));
    startFrom(keeper, now(), linked);
    expect(aside()).toEqual([]);
  });

  test('with a link that carries nothing, and a kept text that cannot be read: both are told', () => {
    keeper.write('design', 'rubbish');
    const start = startFrom(keeper, now(), { ok: false, notice: { title: 'no link', problems: [] } });
    expect(start.notice?.title).toBe('no link');
    expect(start.notice?.problems.map(({ message }) => message).join()).toContain('set aside');
    expect(serialiseDesign(start.document)).toBe(reef);
  });
});
