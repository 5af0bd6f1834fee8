import type { Place, Recommendation } from '@sorrel/engine/plan';
import { once, type Speaker } from '../speaker.ts';
import { decisionOf } from './decision-words.ts';
import { doNotAdd } from './do-not-add.ts';
import { dosesOf } from './doses.ts';
import { phLine } from './ph-line.ts';
import { extent, phReadings, targetText } from './place-words.ts';
import { workingOf } from './working.ts';

/** What the person who hands it out adds to a handout. */
export interface HandoutExtras {
  readonly garden?: string;
  /** Number on the sample bag or the laboratory's report. */
  readonly sampleId?: string;
  /** Who takes it home, by first name. With it, or with `url`, the code on the bag is the title of the page. */
  readonly person?: string;
  /** Address of the plan, printed as a QR code. */
  readonly url?: string;
  /** Name and telephone or address of the adviser who hands it out. */
  readonly contact?: string;
}

/** The words and figures of one handout, in the order they stand on the page. */
export function handoutContent(place: Place, advice: Recommendation, extras: HandoutExtras, speaker: Speaker) {
  const said = new Set<string>();
  const [headline = '', ...reasons] = once(speaker, advice.reasons, said);
  const doses = dosesOf(advice, speaker);
  return {
    ...titleOf(place, extras, speaker),
    id: place.id,
    url: extras.url ?? '',
    garden: extras.garden ?? '',
    sample: extras.sampleId ?? '',
    decision: decisionOf(advice.decision, speaker),
    headline,
    line: phLine([[place, advice]], speaker),
    readings: phReadings(place, speaker),
    means: reasons,
    target: targetText(place, advice, speaker),
    doses,
    how: doses.flatMap((dose) => dose.how),
    need: needText(place, advice, speaker),
    overshoot:
      advice.overshootChance === undefined || doses.length === 0
        ? ''
        : speaker.word('print.overshoot', { chance: speaker.share(advice.overshootChance) }),
    safety: once(speaker, advice.cautions, said),
    doNot: doNotAdd(advice).map((code) => speaker.word(code)),
    retest:
      advice.retest === undefined
        ? { days: '', why: '' }
        : {
            days: speaker.days(advice.retest.earliest, advice.retest.latest),
            why: speaker.say(advice.retest.why),
          },
    know: once(speaker, advice.notes, said),
    ask: once(speaker, advice.ask, said),
    instead: advice.instead.join(', '),
    contact: extras.contact === undefined ? '' : speaker.word('print.who-contact', { contact: extras.contact }),
    working: workingOf(advice.derivation, speaker, extras.url !== undefined),
  };
}

/** A bag of soil is known by its code and by who brought it, a bed by its name. */
function titleOf(place: Place, { sampleId, person, url }: HandoutExtras, speaker: Speaker) {
  const whole = extent(place, speaker);
  if (sampleId === undefined || (person === undefined && url === undefined)) return { name: place.name, extent: whole };
  const name = person === undefined ? sampleId : `${sampleId} · ${person}`;
  const told = place.name === sampleId || place.name === person || place.name === name;
  return { name, extent: told ? whole : speaker.word('print.day-place', { place: place.name, extent: whole }) };
}

function needText(place: Place, advice: Recommendation, speaker: Speaker): string {
  const { requirement } = advice;
  if (requirement === undefined || advice.applications.length === 0) return '';
  const dimension = place.kind === 'container' ? 'massPerVolume' : 'massPerArea';
  const [near = 0, far = 0] = [Math.abs(requirement.low), Math.abs(requirement.high)].sort((a, b) => a - b);
  return speaker.word(requirement.best < 0 ? 'print.need-acid' : 'print.need-lime', {
    best: speaker.rough(Math.abs(requirement.best), dimension),
    range: speaker.range(near, far, dimension),
  });
}
