// Undo and redo: laws that must hold for any sequence of edits.

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { advance, endEdit, redo, startHistory, undo } from '../../src/app/state/history.ts';

describe('history', () => {
  test('undo takes back one step, redo does it again', () => {
    const edited = advance(advance(startHistory('a'), 'b'), 'c');
    expect(undo(edited).present).toBe('b');
    expect(undo(undo(edited)).present).toBe('a');
    expect(redo(undo(edited)).present).toBe('c');
  });

  test('nothing to undo or redo leaves all as it was', () => {
    const start = startHistory('a');
    expect(undo(start)).toBe(start);
    expect(redo(start)).toBe(start);
  });

  test('strokes of one edit are one step, until the edit ends', () => {
    const typed = advance(advance(startHistory('a'), 'b', 'room.temperature'), 'c', 'room.temperature');
    expect(undo(typed).present).toBe('a');
    const again = advance(endEdit(typed), 'd', 'room.temperature');
    expect(undo(again).present).toBe('c');
  });

  test('an edit after undo drops what was undone', () => {
    const forked = advance(undo(advance(startHistory('a'), 'b')), 'c');
    expect(redo(forked)).toBe(forked);
  });

  test('as many undos as edits lead back to the start, redos forward again (seed 20261125)', () => {
    fc.assert(
      fc.property(fc.array(fc.string(), { maxLength: 40 }), (edits) => {
        let history = startHistory('start');
        for (const edit of edits) history = advance(history, edit);
        let back = history;
        for (let count = 0; count < edits.length; count++) back = undo(back);
        expect(back.present).toBe('start');
        for (let count = 0; count < edits.length; count++) back = redo(back);
        expect(back.present).toBe(history.present);
      }),
      { seed: 20261125 },
    );
  });
});
