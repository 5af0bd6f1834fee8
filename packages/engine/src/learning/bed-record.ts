import { SURFACE_MIX } from '../forecast/layers.ts';
import { reactionOf } from '../forecast/reaction.ts';
import type { ForecastApplication, Weather, YearlyInputs } from '../forecast/types.ts';
import type { Product } from '../materials/material.ts';
import { productFrom } from '../materials/product.ts';
import type { PastApplication, Place } from '../plan/place.ts';
import type { BufferCurve, Layer } from '../soil/soil.ts';
import type { Metre } from '../units/si.ts';
import type { BedRecord } from './types.ts';

/** Mixed through where the ground is open, else raked in or laid on (judgement: the record keeps no depth). */
const depthMixed = ({ situation }: Pick<Place, 'situation'>, layer: Layer): Metre =>
  situation === 'open ground' || situation === 'container'
    ? layer.depth
    : situation === 'around plants'
      ? Math.min(SURFACE_MIX, layer.depth)
      : 0;

/**
 * The record of a place as the learning wants it.
 *
 * Past applications are kept "as they will act"; their fineness is taken out again, because the grains decide when. A
 * material the almanac does not know is taken to act within two weeks.
 *
 * @param products the gardener's own, for their screens and fineness
 * @param curve what everything but the bed's own answers says
 */
export function bedRecord(
  place: Place,
  layer: Layer,
  curve: BufferCurve,
  products: readonly Product[] = [],
  weather?: Weather,
  yearly?: YearlyInputs,
): BedRecord {
  const irrigation = place.water?.perYear;
  const inputs: YearlyInputs = {
    ...yearly,
    ...(place.water === undefined || irrigation === undefined ? {} : { waterAlkalinity: place.water.alkalinity }),
  };
  return {
    tests: place.tests,
    applications: pastApplications(place, layer, products),
    layer,
    curve,
    medium: place.medium,
    container: place.kind === 'container',
    ...(weather === undefined && irrigation === undefined
      ? {}
      : { weather: { ...weather, ...(irrigation === undefined ? {} : { irrigation }) } }),
    yearly: inputs,
  };
}

export function pastApplications(place: Place, layer: Layer, products: readonly Product[]): ForecastApplication[] {
  const incorporation = depthMixed(place, layer);
  const treated = (one: PastApplication) =>
    place.applications.some((other) => other.currency < 0 && other.date < one.date);
  return place.applications
    .filter(({ currency }) => currency !== 0)
    .map((one): ForecastApplication => {
      const product = products.find(({ material }) => material === one.material) ?? known(one.material);
      if (product === undefined)
        return { date: one.date, currency: one.currency, reaction: { law: 'fast', days: 14 }, incorporation };
      const fineness = product.efficiency > 0 ? product.efficiency : 1;
      const reaction = reactionOf(product, treated(one));
      const currency = reaction.law === 'dissolving' ? one.currency / fineness : one.currency;
      return { date: one.date, currency, reaction, incorporation };
    });
}

function known(material: string): Product | undefined {
  const product = productFrom(material);
  return product.ok ? product.value : undefined;
}
