import { bufferKinds, phMethods, textures } from '@sorrel/engine/document';
import type { WebCode } from '../../words/label.ts';

/** One entry of a soil test: where it stands in the test, and how it is typed. */
export interface FigureField {
  /** Path in the garden document's test. */
  readonly path: string;
  readonly label: WebCode;
  readonly type: 'number' | 'text' | 'quantity' | 'choice';
  readonly units?: readonly string[];
  readonly choices?: readonly string[];
  /** Whether leaving the choice open is an answer. */
  readonly mayBeUnsaid?: boolean;
}

/** A number a paper may print, in the paper's words, with everything that belongs to it. */
export interface Figure {
  readonly key: string;
  readonly title: WebCode;
  readonly what: WebCode;
  /** Row of the almanac's `lab-fields`, for the other names that papers use. */
  readonly field?: string;
  readonly fields: readonly FigureField[];
}

const SHARE = ['%', 'g/kg'];
const CHARGE = ['meq/100 g', 'cmol/kg', 'mmol/kg'];
const CATION = ['mg/kg', 'ppm', 'lb/acre', 'kg/ha', 'meq/100 g', 'cmol/kg'];

const quantity = (path: string, label: WebCode, units: readonly string[]): FigureField => ({
  path,
  label,
  type: 'quantity',
  units,
});
const number = (path: string, label: WebCode): FigureField => ({ path, label, type: 'number' });
const choice = (path: string, label: WebCode, choices: readonly string[], mayBeUnsaid = false): FigureField => ({
  path,
  label,
  type: 'choice',
  choices,
  mayBeUnsaid,
});
const cation = (key: 'calcium' | 'magnesium' | 'potassium' | 'sodium', field: string): Figure => ({
  key,
  title: `web.fig-${key}`,
  what: 'web.fig-cation-what',
  field,
  fields: [quantity(key, `web.f-${key}`, CATION)],
});

const ph: Figure = {
  key: 'ph',
  title: 'web.fig-ph',
  what: 'web.fig-ph-what',
  field: 'ph-water',
  fields: [
    number('ph.value', 'web.f-ph.value'),
    choice(
      'ph.in',
      'web.f-ph.in',
      phMethods.filter((each) => each !== 'unstated'),
      true,
    ),
  ],
};
const fizz: Figure = {
  key: 'fizz',
  title: 'web.fig-fizz',
  what: 'web.fig-fizz-what',
  fields: [
    choice('fizz.acid', 'web.f-fizz.acid', ['none', 'very slight', 'slight', 'strong', 'violent'], true),
    choice('fizz.vinegar', 'web.f-fizz.vinegar', ['silent', 'heard only', 'mild', 'vigorous'], true),
  ],
};

/** Every number the engine can use, in the groups in which papers print them. */
export const figureGroups: readonly { readonly title: WebCode; readonly figures: readonly Figure[] }[] = [
  {
    title: 'web.test-group-ph',
    figures: [
      ph,
      {
        key: 'buffer',
        title: 'web.fig-buffer',
        what: 'web.fig-buffer-what',
        field: 'buffer-ph',
        fields: [number('buffer.value', 'web.f-buffer.value'), choice('buffer.kind', 'web.f-buffer.kind', bufferKinds)],
      },
      {
        key: 'limeBufferCapacity',
        title: 'web.fig-limeBufferCapacity',
        what: 'web.fig-limeBufferCapacity-what',
        fields: [
          quantity('limeBufferCapacity.value', 'web.f-limeBufferCapacity.value', ['mg/kg', 'ppm', 'g/kg']),
          choice('limeBufferCapacity.kind', 'web.f-limeBufferCapacity.kind', ['30 min', 'equilibrium']),
        ],
      },
      {
        key: 'printedRate',
        title: 'web.fig-printedRate',
        what: 'web.fig-printedRate-what',
        field: 'lime-requirement',
        fields: [
          quantity('printedRate.rate', 'web.f-printedRate.rate', [
            'lb/1000 sq ft',
            'lb/100 sq ft',
            'lb/acre',
            'short ton/acre',
            'kg/m²',
            'g/m²',
            'kg/ha',
            't/ha',
          ]),
          quantity('printedRate.depth', 'web.f-printedRate.depth', ['in', 'cm']),
          number('printedRate.target', 'web.f-printedRate.target'),
          quantity('printedRate.cce', 'web.f-printedRate.cce', ['%']),
          { path: 'printedRate.method', label: 'web.f-printedRate.method', type: 'text' },
        ],
      },
    ],
  },
  {
    title: 'web.test-group-exchange',
    figures: [
      {
        key: 'acidity',
        title: 'web.fig-acidity',
        what: 'web.fig-acidity-what',
        field: 'exch-acidity',
        fields: [quantity('acidity', 'web.f-acidity', [...CHARGE, 'meq/100 cm³'])],
      },
      {
        key: 'cec',
        title: 'web.fig-cec',
        what: 'web.fig-cec-what',
        field: 'cec',
        fields: [
          quantity('cec', 'web.f-cec', CHARGE),
          choice('cecBasis', 'web.f-cecBasis', ['pH 7', 'summed cations', 'effective'], true),
        ],
      },
      {
        key: 'baseSaturation',
        title: 'web.fig-baseSaturation',
        what: 'web.fig-baseSaturation-what',
        field: 'base-sat',
        fields: [quantity('baseSaturation', 'web.f-baseSaturation', ['%'])],
      },
      cation('calcium', 'ca'),
      cation('magnesium', 'mg'),
      cation('potassium', 'k'),
      cation('sodium', 'na'),
      {
        key: 'aluminium',
        title: 'web.fig-aluminium',
        what: 'web.fig-aluminium-what',
        field: 'al',
        fields: [quantity('aluminium', 'web.f-aluminium', ['meq/100 g', 'cmol/kg', 'mg/kg', 'ppm'])],
      },
    ],
  },
  {
    title: 'web.test-group-soil',
    figures: [
      {
        key: 'organicMatter',
        title: 'web.fig-organicMatter',
        what: 'web.fig-organicMatter-what',
        field: 'om-pct',
        fields: [quantity('organicMatter', 'web.f-organicMatter', SHARE)],
      },
      {
        key: 'organicCarbon',
        title: 'web.fig-organicCarbon',
        what: 'web.fig-organicCarbon-what',
        field: 'oc-pct',
        fields: [quantity('organicCarbon', 'web.f-organicCarbon', SHARE)],
      },
      {
        key: 'texture',
        title: 'web.fig-texture',
        what: 'web.fig-texture-what',
        field: 'texture',
        fields: [choice('texture', 'web.f-texture', textures)],
      },
      {
        key: 'sizes',
        title: 'web.fig-sizes',
        what: 'web.fig-sizes-what',
        fields: [
          quantity('sand', 'web.f-sand', SHARE),
          quantity('silt', 'web.f-silt', SHARE),
          quantity('clay', 'web.f-clay', SHARE),
        ],
      },
      {
        key: 'carbonate',
        title: 'web.fig-carbonate',
        what: 'web.fig-carbonate-what',
        field: 'cce',
        fields: [quantity('carbonate', 'web.f-carbonate', SHARE)],
      },
      fizz,
    ],
  },
  {
    title: 'web.test-group-care',
    figures: [
      {
        key: 'conductivity',
        title: 'web.fig-conductivity',
        what: 'web.fig-conductivity-what',
        field: 'ec',
        fields: [quantity('conductivity', 'web.f-conductivity', ['dS/m', 'mS/cm', 'µS/cm'])],
      },
      {
        key: 'scoopedDensity',
        title: 'web.fig-scoopedDensity',
        what: 'web.fig-scoopedDensity-what',
        field: 'w-v',
        fields: [quantity('scoopedDensity', 'web.f-scoopedDensity', ['g/cm³', 'kg/L'])],
      },
      {
        key: 'lead',
        title: 'web.fig-lead',
        what: 'web.fig-lead-what',
        field: 'lead',
        fields: [quantity('lead', 'web.f-lead', ['mg/kg', 'ppm'])],
      },
    ],
  },
];

/** What a kit, a strip or a probe can tell. */
export const homeFigures: readonly string[] = [ph.key, fizz.key];

export const allFigures: readonly Figure[] = figureGroups.flatMap((group) => group.figures);
