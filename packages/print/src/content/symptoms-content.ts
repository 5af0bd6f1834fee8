import type { Message } from '@sorrel/engine/derivation';
import {
  type Answers,
  answerCode,
  type Look,
  nextLooks,
  nutrientName,
  QUESTION_LIST,
  QUESTIONS,
  questionCode,
  type SymptomEvidence,
  symptomCandidates,
  weedEvidence,
} from '@sorrel/engine/nutrients';
import type { IsoDate } from '@sorrel/engine/units';
import { printPh } from '@sorrel/engine/units';
import type { Sheet } from '../page.ts';
import { once, type Speaker } from '../speaker.ts';

/** What was seen on a sick plant, and what is known of where it grows. */
export interface Seen {
  readonly answers: Answers;
  readonly evidence: SymptomEvidence;
  readonly plant?: string;
  readonly place?: string;
  readonly date?: IsoDate;
  readonly weeds?: readonly string[];
  readonly note?: string;
}

/** Causes shown; the rest are unlikely and told as one. */
const SHOWN = 6;
/** Bits below which another look is not worth the walk. */
const LITTLE = 0.1;
/** Looks offered at the end, for when the first cannot be had. */
const LOOKS = 3;

/** The words and figures of a page of symptoms: what was seen, what it may be, what to look at next. */
export function symptomsContent({ answers, evidence, ...seen }: Seen, speaker: Speaker): Sheet {
  const { word } = speaker;
  const candidates = symptomCandidates(answers, evidence);
  const looks = nextLooks(answers, evidence).filter(({ bits }) => bits >= LITTLE);
  const shown = candidates.slice(0, SHOWN);
  const rest = candidates.slice(SHOWN).reduce((sum, { probability }) => sum + probability, 0);
  const mark = word('print.memory-mark');
  const weeds = seen.weeds === undefined || seen.weeds.length === 0 ? undefined : weedEvidence(seen.weeds);
  const told = QUESTION_LIST.flatMap((question) => {
    const answer = answers[question];
    return answer === undefined ? [] : [[word(questionCode(question)), word(answerCode(question, answer))]];
  });
  const plant = seen.plant ?? evidence.crop;
  return {
    title: plant === undefined ? word('print.symptoms-title') : word('print.symptoms-title-plant', { plant }),
    under: [
      ...(seen.place === undefined ? [] : [seen.place]),
      ...(seen.date === undefined ? [] : [word('print.symptoms-seen-on', { date: speaker.day(seen.date) })]),
      evidence.ph === undefined
        ? word('print.symptoms-no-ph')
        : word('print.symptoms-ph', { ph: printPh(evidence.ph) }),
    ].join(', '),
    first: [
      told.length === 0
        ? { title: word('print.symptoms-seen'), lead: word('print.symptoms-nothing') }
        : {
            title: word('print.symptoms-seen'),
            table: {
              widths: ['1', '1'],
              head: [word('print.symptoms-question'), word('print.symptoms-answer')],
              rows: told,
            },
          },
      ...(seen.note === undefined || seen.note === '' ? [] : [{ title: word('print.symptoms-note'), lead: seen.note }]),
      {
        title: word('print.symptoms-causes'),
        chances: [
          ...shown.map((each) => ({
            name: capital(each.name) + (each.basis === 'memory' ? mark : ''),
            kind: word(`print.symptoms-kind-${each.kind}`),
            share: each.probability,
            chance: speaker.share(each.probability),
          })),
          { name: word('print.symptoms-others'), kind: '', share: rest, chance: speaker.share(rest) },
        ],
      },
      {
        title: word('print.symptoms-next'),
        ...(looks.length === 0
          ? { lead: word('nutrients.symptom-enough') }
          : { ticks: looks.slice(0, LOOKS).map((look) => lookText(look, speaker)) }),
      },
      {
        title: word('print.symptoms-heed'),
        items: once(speaker, [
          { code: 'nutrients.symptom-order' },
          { code: 'nutrients.symptom-confirm' },
          { code: 'nutrients.symptom-basis' },
        ]),
      },
      ...(weeds === undefined ? [] : [{ title: word('print.symptoms-weeds'), items: once(speaker, weeds.messages) }]),
      { title: word('print.notes'), lines: 3 },
    ],
    parts: [],
    sources: [...shown.flatMap(({ sources }) => sources), ...(weeds?.sources ?? [])],
    memory: shown.some(({ basis }) => basis === 'memory'),
  };
}

function lookText(look: Look, speaker: Speaker): string {
  if (look.kind === 'question')
    return speaker.word('print.symptoms-look', {
      question: speaker.word(questionCode(look.question)),
      answers: QUESTIONS[look.question].map((answer) => speaker.word(answerCode(look.question, answer))).join('; '),
    });
  const message: Message =
    look.kind === 'ph'
      ? { code: 'print.symptoms-read-ph' }
      : { code: 'print.symptoms-soil-test', parameters: { nutrient: nutrientName(look.nutrient) } };
  return speaker.say(message);
}

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
