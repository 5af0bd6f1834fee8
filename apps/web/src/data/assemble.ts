import type { GardenDocument } from '@sorrel/engine/document';
import type { Entry, GardenRecord } from './garden-store.ts';
import { ofKind, type Thing, things } from './things.ts';

type PlaceEntry = GardenDocument['places'][number];

/**
 * The record of one garden as it stands, with the document the engine reads. The server does the same for its own
 * store; this is for gardens kept in the page.
 */
export function assemble(id: string, entries: readonly Entry[]): GardenRecord | undefined {
  const all = things(entries);
  const garden = ofKind(all, 'garden')[0];
  if (garden === undefined) return undefined;
  const places = ofKind(all, 'place');
  const materials = ofKind(all, 'material');
  const document: GardenDocument = {
    ...garden.content,
    places: places.map((place) => placeEntry(place, all)),
    ...(materials.length === 0 ? {} : { materials: materials.map((each) => each.content) }),
  };
  return { id, document, placeIds: places.map((place) => place.id), entries };
}

function placeEntry(place: Thing<'place'>, all: readonly Thing[]): PlaceEntry {
  const here = all.filter((each) => each.place === place.id);
  const plants = [
    ...(place.content.plants ?? []),
    ...ofKind(here, 'planting').flatMap(({ content }) => (content.lifted === undefined ? [content.plant] : [])),
  ];
  const tests = [
    ...ofKind(here, 'test').map((each) => each.content),
    ...ofKind(here, 'reading').map(({ content: { slurries: _cups, meterCheck: _check, ...test } }) => test),
  ];
  const applications = [
    ...ofKind(here, 'application').map((each) => each.content),
    ...ofKind(here, 'task').flatMap(({ content: { date, used } }) => (used === undefined ? [] : [{ date, ...used }])),
  ];
  const water = ofKind(here, 'water').at(-1)?.content;
  return {
    ...place.content,
    ...(plants.length === 0 ? {} : { plants }),
    ...(water === undefined
      ? {}
      : {
          water: { alkalinity: water.alkalinity, ...(water.perYear === undefined ? {} : { perYear: water.perYear }) },
        }),
    ...(tests.length === 0 ? {} : { tests }),
    ...(applications.length === 0 ? {} : { applications }),
  };
}
