import type { MessageCode } from '@sorrel/almanac/words';
import type { Message, Parameter } from '../derivation/message.ts';

/** Something nobody wrote and Sorrel took for granted, so that it can be said. */
export interface Choice {
  readonly place?: string;
  readonly field: string;
  readonly message: Message;
}

export interface Choices {
  add(field: string, code: MessageCode, parameters?: Readonly<Record<string, Parameter>>): void;
}

/** Collects choices of one place (or of the garden) into a list, each said once. */
export function choicesInto(list: Choice[], place?: string): Choices {
  return {
    add(field, code, parameters) {
      if (list.some((each) => each.place === place && each.field === field && each.message.code === code)) return;
      const message: Message = parameters === undefined ? { code } : { code, parameters };
      list.push(place === undefined ? { field, message } : { place, field, message });
    },
  };
}
