// Coefficient files are fetched as requests name their fluids: which ones a request names, that only those are fetched, that
// replies keep their order meanwhile, and that one that cannot be fetched costs its own request only.

import { readdirSync, readFileSync } from 'node:fs';
import { beforeEach, describe, expect, test, vi } from 'vitest';
import { needsMachineReading, needsSizedTanks } from '../../src/app/worker/engine-parts.ts';
import { fluidsNamed, fluidsWished } from '../../src/app/worker/fluids-named.ts';
import type { EngineRequest } from '../../src/app/worker/messages.ts';
import type { DiagramRequest } from '../../src/charts/index.ts';
import type { TextbookCycleRequest } from '../../src/loop/index.ts';
import { refrigerantNames } from '../../src/matter/refrigerants/index.ts';
import { exampleText, replyTo } from './answers.ts';

const reef = exampleText('reef-in-the-study.json');
const designs = new URL('../../data/designs/', import.meta.url);
const designText = (file: string): string => readFileSync(new URL(file, designs), 'utf8');

function cycleOf(refrigerant: string, kind: 'cycle' | 'secondCycle' = 'cycle'): EngineRequest {
  const numbers = { evaporating: 273.15, condensing: 313.15, superheat: 5, subcooling: 3, isentropicEfficiency: 0.7 };
  const request = { refrigerant, ...numbers } as TextbookCycleRequest;
  return { kind, form: { request, isotherms: [], isobars: [] }, view: 'metric' };
}

function onFluid(refrigerant: string): string {
  const design = JSON.parse(reef);
  design.machine.refrigerant = refrigerant;
  return JSON.stringify(design);
}

describe('the fluids a request names', () => {
  const requests: readonly (readonly [string, EngineRequest, readonly string[]])[] = [
    ['a design', { kind: 'assess', text: reef, view: 'metric' }, ['R134a']],
    [
      'a design on another fluid than its compressor’s',
      { kind: 'assess', text: onFluid('R290'), view: 'us' },
      ['R290', 'R134a'],
    ],
    ['a text that is no design', { kind: 'assess', text: '{"machine":{"refrigerant":"R290"}}', view: 'metric' }, []],
    ['a cycle', cycleOf('R410A'), ['R410A']],
    ['a cycle by another name of its fluid', cycleOf('ammonia'), ['R717']],
    ['the cycle laid over it', cycleOf('R744', 'secondCycle'), ['R744']],
    ['a name that means none', cycleOf('R999'), []],
    ['a diagram', { kind: 'diagram', request: { refrigerant: 'R32' } as DiagramRequest, view: 'metric' }, ['R32']],
    [
      'a comparison',
      { kind: 'compare', form: { text: reef, fluids: ['R32', 'CO2', 'R134a'], basis: 'sameDome' }, view: 'metric' },
      ['R134a', 'R32', 'R744'],
    ],
    ['the steps of a design', { kind: 'workings', text: reef, view: 'metric' }, ['R134a']],
    ['the formulas', { kind: 'formulas' }, []],
    ['a range', { kind: 'range', result: 'tank.load' }, []],
  ];

  test.each(requests)('%s', (_what, request, names) => {
    expect(fluidsNamed(request)).toEqual(names);
  });

  test('a refrigerant that is not a text at all is left to the engine', () => {
    expect(fluidsNamed(cycleOf(7 as unknown as string))).toEqual([]);
  });
});

describe('what a request needs besides', () => {
  const asked = (text: string, kind: 'assess' | 'machine' = 'assess'): EngineRequest => ({
    kind,
    text,
    view: 'metric',
  });
  const known = (compressor: object): string => {
    const design = JSON.parse(reef);
    design.machine.compressor = { ...design.machine.compressor, ...compressor };
    return JSON.stringify(design);
  };

  test('the study of a machine is richer by the fluids that compressors are made for; no other answer is', () => {
    expect(fluidsWished(asked(reef, 'machine'))).toEqual(expect.arrayContaining(['R600a', 'R290', 'R22']));
    expect(fluidsWished(asked(reef))).toEqual([]);
  });

  test('what reads points of a machine, where a design has any', () => {
    expect(needsMachineReading(asked(reef))).toBe(false);
    expect(needsMachineReading(asked(known({ nameplate: { horsepower: '1/5 hp' } })))).toBe(false);
    expect(needsMachineReading(asked(known({ nameplate: { ratedCurrent: '1.1 A' } })))).toBe(true);
    for (const list of ['ratings', 'coefficients', 'tables', 'bench']) {
      expect(needsMachineReading(asked(known({ [list]: [{}] }))), list).toBe(true);
    }
    // Of the first format.
    expect(needsMachineReading(asked(known({ kind: 'rating' })))).toBe(true);
    expect(needsMachineReading(asked('no design'))).toBe(false);
    expect(needsMachineReading({ kind: 'formulas' })).toBe(false);
  });

  test('what reckons a tank from its sizes, where a design has them', () => {
    const bare = exampleText('frag-tank-cold-garage.json');
    expect(needsSizedTanks(asked(reef))).toBe(false);
    expect(needsSizedTanks(asked(bare))).toBe(true);
    expect(needsSizedTanks(asked(bare, 'machine'))).toBe(true);
    const form = { text: bare, fluids: [], basis: 'sameDome' } as const;
    expect(needsSizedTanks({ kind: 'compare', form, view: 'metric' })).toBe(true);
    expect(needsSizedTanks(asked('{"tank":{"load":7}}'))).toBe(false);
    expect(needsSizedTanks({ kind: 'formulas' })).toBe(false);
  });
});

// The fluids handed over to all tests are those of another copy of the library.
async function freshly() {
  vi.resetModules();
  const refrigerants = await import('../../src/matter/refrigerants/index.ts');
  const fluids = await import('../../src/app/worker/fluids.ts');
  const { hasMachineParts, hasSizedTanks } = await import('../../src/assess/index.ts');
  const { createAnswering } = await import('../../src/app/worker/answering.ts');
  return { ...refrigerants, ...fluids, hasMachineParts, hasSizedTanks, createAnswering };
}

type Fresh = Awaited<ReturnType<typeof freshly>>;

describe('fetching', () => {
  let fresh: Fresh;
  beforeEach(async () => {
    fresh = await freshly();
  });

  test('there is a file of every refrigerant, and none is here before it is asked for', () => {
    expect([...fresh.fetchableFluids].sort()).toEqual([...refrigerantNames].sort());
    expect(refrigerantNames.filter((name) => fresh.hasCoefficientFile(name))).toEqual([]);
  });

  test('each file is of the fluid it is named after, and brings that one only', async () => {
    for (const [index, name] of refrigerantNames.entries()) {
      expect(await fresh.ensureFluids([name])).toEqual([]);
      expect(fresh.refrigerant(name).name).toBe(name);
      expect(refrigerantNames.filter((other) => fresh.hasCoefficientFile(other))).toEqual(
        refrigerantNames.slice(0, index + 1),
      );
    }
  });

  test('what is here is not fetched again; what could not be fetched is tried again', async () => {
    const file = (await import('../../data/refrigerants/R32.json')).default;
    const load = vi.fn<() => Promise<unknown>>().mockRejectedValueOnce(new Error('no network')).mockResolvedValue(file);
    expect(await fresh.ensureFluids(['R32', 'R32'], { R32: load })).toEqual(['R32']);
    expect(await fresh.ensureFluids(['R32'], { R32: load })).toEqual([]);
    expect(await fresh.ensureFluids(['R32'], { R32: load })).toEqual([]);
    expect(load).toHaveBeenCalledTimes(2);
  });

  test('a file that is of no known fluid counts as not fetched', async () => {
    const files = ['R32', 'R22'].map((name, index) => [name, () => Promise.resolve([{ name: 'R999' }, null][index])]);
    expect(await fresh.ensureFluids(['R32', 'R22', 'R12'], Object.fromEntries(files))).toEqual(['R32', 'R22', 'R12']);
  });
});

describe('answering', () => {
  test('the first request of a fresh worker is answered with what it fetched', async () => {
    const { createAnswering, hasCoefficientFile } = await freshly();
    const reply = await createAnswering(() => 0)({ id: 1, body: { kind: 'assess', text: reef, view: 'metric' } });
    expect(reply).toMatchObject({ kind: 'assess', id: 1, ok: true });
    expect(hasCoefficientFile('R134a')).toBe(true);
    expect(hasCoefficientFile('R290')).toBe(false);
  });

  test('a fresh worker fetches what reckons a tank from its sizes with the first design that has them', async () => {
    const { createAnswering, hasSizedTanks } = await freshly();
    const answer = createAnswering(() => 0);
    expect(await answer({ id: 1, body: { kind: 'assess', text: reef, view: 'metric' } })).toMatchObject({ ok: true });
    expect(hasSizedTanks()).toBe(false);
    const text = exampleText('frag-tank-cold-garage.json');
    expect(await answer({ id: 2, body: { kind: 'assess', text, view: 'metric' } })).toMatchObject({ ok: true });
    expect(hasSizedTanks()).toBe(true);
  });

  test('a fresh worker fetches what reads points of a machine with the first design that has any', async () => {
    const { createAnswering, hasMachineParts } = await freshly();
    const answer = createAnswering(() => 0);
    expect(await answer({ id: 1, body: { kind: 'assess', text: reef, view: 'metric' } })).toMatchObject({ ok: true });
    expect(hasMachineParts()).toBe(false);
    const text = designText('freezer-dome-with-a-worn-nameplate.json');
    expect(await answer({ id: 2, body: { kind: 'assess', text, view: 'metric' } })).toMatchObject({ ok: true });
    expect(hasMachineParts()).toBe(true);
  });

  test.each(readdirSync(designs))('a fresh worker has words for all that it finds of %s', async (file) => {
    const text = designText(file);
    const whole = replyTo(text);
    const { createAnswering } = await freshly();
    const reply = await createAnswering(() => 0)({ id: 1, body: { kind: 'assess', text, view: 'metric' } });
    if (!reply.ok || reply.kind !== 'assess' || !whole.ok || whole.kind !== 'assess')
      throw new Error(JSON.stringify([reply, whole]));
    expect(reply.answer.findingWords.length).toBeGreaterThan(0);
    expect(reply.answer.findingWords).toEqual(whole.answer.findingWords);
    expect(reply.answer.cautionWords).toEqual(whole.answer.cautionWords);
  });

  test('replies come in the order of their requests, however long a fluid takes', async () => {
    const { createAnswering, ensureFluids } = await freshly();
    let letGo = (): void => undefined;
    const held = new Promise<void>((resolve) => {
      letGo = resolve;
    });
    const answer = createAnswering(
      () => 0,
      async (names) => {
        if (names.includes('R717')) await held;
        return ensureFluids(names);
      },
    );
    const order: number[] = [];
    const asked = [cycleOf('R717'), cycleOf('R134a'), { kind: 'formulas' } as const].map((body, id) =>
      answer({ id, body }).then((reply) => {
        order.push(reply.id);
        return reply.ok;
      }),
    );
    await new Promise((resolve) => setTimeout(resolve, 20));
    expect(order).toEqual([]);
    letGo();
    expect(await Promise.all(asked)).toEqual([true, true, true]);
    expect(order).toEqual([0, 1, 2]);
  });

  test('a fluid that cannot be fetched is a problem in words, and only its own request has it', async () => {
    const { createAnswering, ensureFluids } = await freshly();
    const answer = createAnswering(
      () => 0,
      async (names) => [...names.filter((name) => name === 'R744'), ...(await ensureFluids(names))],
    );
    const reply = await answer({ id: 1, body: cycleOf('CO2') });
    expect(reply).toMatchObject({ kind: 'cycle', id: 1, ok: false });
    expect(reply.ok ? [] : reply.problems).toEqual([
      {
        code: 'fluidMissing',
        path: undefined,
        message: expect.stringMatching(/^The equation of R744 could not be fetched/),
      },
    ]);
    expect(await answer({ id: 2, body: cycleOf('R717') })).toMatchObject({ ok: true });
  });

  test('an unknown name keeps the engine’s own words', async () => {
    const { createAnswering } = await freshly();
    const reply = await createAnswering(() => 0)({ id: 1, body: cycleOf('R134') });
    expect(reply.ok ? '' : reply.problems[0]).toMatchObject({
      code: 'unknownRefrigerant',
      message: expect.stringContaining('the nearest is R134a'),
    });
  });

  test('a fault on the way is an answer too', async () => {
    const { createAnswering } = await freshly();
    const answer = createAnswering(
      () => 0,
      () => Promise.reject(new Error('fell over')),
    );
    const reply = await answer({ id: 4, body: cycleOf('R134a') });
    expect(reply).toMatchObject({ id: 4, ok: false, problems: [{ code: 'programFault' }] });
  });
});
