import { describe, expect, it } from 'vitest';
import { add, correct } from '../../data/write.ts';
import { afterUse, materialName, takenWith, withStock } from './stock.ts';

const lime = { material: 'calcitic-limestone', name: 'mine', onHand: '15 lb' };

describe('the stock at hand', () => {
  it('is less what was used, in the unit it was written in, and never below nothing', () => {
    expect(afterUse(lime, '7.5 lb')?.onHand).toBe('7.5 lb');
    // 1 kg is 2.20462 lb (NIST SP 811).
    expect(afterUse(lime, '2 kg')?.onHand).toBe('10.591 lb');
    expect(afterUse(lime, '20 lb')?.onHand).toBe('0 lb');
    expect(afterUse({ ...lime, onHand: '5 lb 4 oz' }, '1 lb')?.onHand).toBe('1.928 kg');
    expect(withStock({ ...lime, onHand: '0 lb' }, 1)?.onHand).toBe('2.205 lb');
  });

  it('is left alone where it is not kept, or what was used is no weight', () => {
    expect(afterUse({ material: 'calcitic-limestone' }, '1 lb')).toBeUndefined();
    expect(afterUse(lime, '30 L')).toBeUndefined();
  });

  it('knows a material by its bag, else by what it is', () => {
    expect(materialName(lime)).toBe('mine');
    expect(materialName({ material: 'calcitic-limestone' })).toBe('Ground calcitic limestone');
  });

  it('finds what a task took, and nothing where nothing was written with it', () => {
    const bag = add('g', 'material', lime);
    const task = add(
      'g',
      'task',
      { date: '2026-10-12', task: 'Spread', used: { material: 'mine', amount: '5 lb' } },
      'p',
    );
    const less = correct('g', bag.id, 'material', { ...lime, onHand: '10 lb' });
    const record = [bag, task, less].map((entry, index) => ({ number: index + 1, entry }));
    expect(takenWith(record, { id: task.id, number: 2 })).toEqual({
      material: bag.id,
      mass: expect.closeTo(5 * 0.45359237, 9),
    });
    expect(takenWith(record.slice(0, 2), { id: task.id, number: 2 })).toBeUndefined();
    const more = correct('g', bag.id, 'material', { ...lime, onHand: '20 lb' });
    expect(takenWith([...record.slice(0, 2), { number: 3, entry: more }], { id: task.id, number: 2 })).toBeUndefined();
  });
});
