import {
  type Answers,
  answerCode,
  type Look,
  nextLooks,
  nutrientName,
  QUESTION_LIST,
  QUESTIONS,
  type Question,
  questionCode,
  type SymptomEvidence,
  symptomCandidates,
} from '@sorrel/engine/nutrients';
import { exit, Stop } from '../exit.ts';
import { canUnicode, hanging, paragraph } from '../layout.ts';
import { nutrientWords } from '../nutrients-words.ts';
import { read } from '../options.ts';
import { paperOptions, writePaper } from '../paper.ts';
import { type Speaker, speakerFor, toAscii } from '../speak.ts';
import { words } from '../words.ts';

const text = { type: 'string' } as const;
const options = {
  leaves: text,
  pattern: text,
  spots: text,
  growth: text,
  roots: text,
  fruit: text,
  recent: text,
  crop: text,
  ph: text,
  pot: { type: 'boolean' },
  pdf: text,
  json: { type: 'boolean' },
  ascii: { type: 'boolean' },
  help: { type: 'boolean', short: 'h' },
} as const;

/** Candidates shown; the rest are unlikely. */
const SHOWN = 6;
/** Bits below which another look is not worth the walk. */
const LITTLE = 0.1;

/** `sorrel leaves`: what may lie behind what one sees, and what to look at next. */
export async function run(args: readonly string[]): Promise<number> {
  const { values, positionals } = read(args, options, 'leaves');
  if (positionals[0] !== undefined) throw new Stop(exit.usage, words.usage('leaves', words.strayWord(positionals[0])));
  const answers = answersOf(values);
  const evidence = evidenceOf(values);
  const candidates = symptomCandidates(answers, evidence);
  const looks = nextLooks(answers, evidence);
  if (values.pdf !== undefined) {
    const { symptomsPage } = await import('@sorrel/print');
    writePaper(values.pdf, symptomsPage({ answers, evidence }, paperOptions({ system: 'metric' })));
  }
  if (values.json) {
    process.stdout.write(`${JSON.stringify({ candidates, next: looks }, null, 2)}\n`);
    return exit.fine;
  }
  const speaker = speakerFor('metric', canUnicode(values.ascii));
  const page = [
    `${nutrientWords.candidates}\n${candidates
      .slice(0, SHOWN)
      .map((each) => hanging('- ', candidateText(each, speaker), 2))
      .join('\n')}`,
    `${nutrientWords.next}\n${nextText(looks[0], speaker)}`,
    paragraph([said(speaker, 'nutrients.symptom-order'), said(speaker, 'nutrients.symptom-confirm')].join(' '), 0, 0),
    paragraph(said(speaker, 'nutrients.symptom-basis'), 0, 0),
  ].join('\n\n');
  process.stdout.write(`${speaker.unicode ? page : toAscii(page)}\n`);
  return exit.fine;
}

const said = (speaker: Speaker, code: Parameters<Speaker['say']>[0]['code']): string => speaker.say({ code });

const candidateText = ({ name, probability }: ReturnType<typeof symptomCandidates>[number], speaker: Speaker): string =>
  speaker.say({
    code: 'nutrients.symptom-candidate',
    parameters: { name, chance: { value: probability, dimension: 'share' } },
  });

function nextText(look: Look | undefined, speaker: Speaker): string {
  if (look === undefined || look.bits < LITTLE) return hanging('', said(speaker, 'nutrients.symptom-enough'), 2);
  if (look.kind === 'ph') return hanging('', said(speaker, 'nutrients.symptom-ph'), 2);
  if (look.kind === 'soil test') {
    const parameters = { nutrient: nutrientName(look.nutrient) };
    return hanging('', speaker.say({ code: 'nutrients.symptom-soil-test', parameters }), 2);
  }
  const { question } = look;
  const asked = speaker.say({
    code: 'nutrients.symptom-look',
    parameters: { question: said(speaker, questionCode(question)) },
  });
  const answers = QUESTIONS[question].map((answer) =>
    hanging(`--${question} ${answer}: `, said(speaker, answerCode(question, answer)), 4),
  );
  return [hanging('', asked, 2), ...answers].join('\n');
}

type Values = { readonly [K in keyof typeof options]?: string | boolean | undefined };

function answersOf(values: Values): Answers {
  const answers: Partial<Record<Question, string>> = {};
  for (const question of QUESTION_LIST) {
    const answer = values[question];
    if (typeof answer !== 'string') continue;
    const known: readonly string[] = QUESTIONS[question];
    if (!known.includes(answer))
      throw new Stop(exit.usage, words.usage('leaves', nutrientWords.notAnswer(question, answer, known.join(', '))));
    answers[question] = answer;
  }
  return answers as Answers;
}

function evidenceOf({ crop, ph, pot }: Values): SymptomEvidence {
  const read = ph === undefined ? undefined : Number(ph);
  if (read !== undefined && !(ph !== '' && read >= 0 && read <= 14))
    throw new Stop(exit.usage, words.usage('leaves', nutrientWords.notNumber(String(ph))));
  return {
    ...(typeof crop === 'string' ? { crop } : {}),
    ...(read === undefined ? {} : { ph: read }),
    ...(pot === true ? { medium: 'soilless' as const } : {}),
  };
}
