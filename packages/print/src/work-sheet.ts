import type { Garden, GardenPlan } from '@sorrel/engine/plan';
import { workSheetContent } from './content/work-sheet-content.ts';
import { workSheetDesign } from './designs/work-sheet.typ.ts';
import { type PrintOptions, paperOf } from './options.ts';
import { type Speaker, speakerFor } from './speaker.ts';
import { typeset } from './typeset/typeset.ts';

/**
 * A garden's work sheet: all places on one pH line, what to buy, and for each place what to do, with boxes to tick,
 * room for the amount really used and its date, and the cautions where the work is done. Places that need most stand first.
 *
 * @param plan of the same garden, its recommendations in the order of the garden's places
 * @returns PDF
 */
export function workSheet(garden: Garden, plan: GardenPlan, options: PrintOptions): Uint8Array {
  const speaker = speakerFor({ currencySymbol: garden.currencySymbol, ...options });
  const data = {
    title: speaker.word('print.title-work-sheet', { garden: garden.name }),
    paper: paperOf(options),
    language: options.language ?? 'en',
    size: 11,
    words: layoutWords(speaker, options),
    sheet: workSheetContent(garden, plan, speaker),
  };
  return typeset(workSheetDesign, data, { fonts: options.fonts ?? [] });
}

function layoutWords({ word, day }: Speaker, options: PrintOptions): Record<string, string> {
  return {
    'local-rules': word('print.local-rules'),
    printed: word('print.printed', { date: day(options.printed) }),
    'page-word': word('print.page'),
    'work-sheet': word('print.work-sheet'),
    'plan-of': word('print.plan-of'),
    'line-title': word('print.line-title-garden'),
    ph: word('print.line-ph'),
    'ph-now': word('print.ph-now'),
    shopping: word('print.shopping'),
    'shopping-none': word('print.shopping-none'),
    'shop-product': word('print.shop-product'),
    'shop-needed': word('print.shop-needed'),
    'shop-on-hand': word('print.shop-on-hand'),
    'shop-buy': word('print.shop-buy'),
    'shop-bags': word('print.shop-bags'),
    'shop-cost': word('print.shop-cost'),
    'shop-total': word('print.shop-total'),
    'shop-note': word('print.shop-note'),
    'to-do': word('print.places'),
    used: word('print.used'),
    on: word('print.on'),
    'take-care': word('print.take-care'),
    notes: word('print.notes'),
    'memory-note': word('print.memory-note'),
  };
}
