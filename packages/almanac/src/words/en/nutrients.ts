import { symptoms } from './nutrients/symptoms.ts';

/** What the `nutrients` room says, one template a code. */
export const nutrients = {
  ...symptoms,

  // along the pH scale
  'nutrients.usable-much-less': 'At pH {today} the {nutrient} you have is far less usable than at {planned}.',
  'nutrients.usable-half': 'At pH {today} the {nutrient} you have is only about half as usable as at {planned}.',
  'nutrients.usable-somewhat-less': 'At pH {today} the {nutrient} you have is somewhat less usable than at {planned}.',
  'nutrients.move-ph-first': 'Adding more helps little until the pH has moved.',
  'nutrients.usable-same': 'For {nutrient} no clear difference is known between pH {today} and {planned}.',
  'nutrients.usable-somewhat-more': 'At pH {today} the {nutrient} you have is somewhat more usable than at {planned}.',
  'nutrients.usable-twice': 'At pH {today} the {nutrient} you have is about twice as usable as at {planned}.',
  'nutrients.usable-much-more': 'At pH {today} the {nutrient} you have is far more usable than at {planned}.',
  'nutrients.old-chart-same': 'The old chart shows no clear difference for {nutrient} here.',
  'nutrients.old-chart-much-less':
    'The old chart, read from memory, says {nutrient} is far less usable at pH {today} than at {planned}; newer work does not support that.',
  'nutrients.old-chart-half':
    'The old chart, read from memory, says {nutrient} is about half as usable at pH {today} as at {planned}; newer work does not support that.',
  'nutrients.old-chart-somewhat-less':
    'The old chart, read from memory, says {nutrient} is somewhat less usable at pH {today} than at {planned}; newer work does not support that.',
  'nutrients.old-chart-somewhat-more':
    'The old chart, read from memory, says {nutrient} is somewhat more usable at pH {today} than at {planned}; newer work does not support that.',
  'nutrients.old-chart-twice':
    'The old chart, read from memory, says {nutrient} is about twice as usable at pH {today} as at {planned}; newer work does not support that.',
  'nutrients.old-chart-much-more':
    'The old chart, read from memory, says {nutrient} is far more usable at pH {today} than at {planned}; newer work does not support that.',
  'nutrients.series-revised':
    'The lines follow newer work. Which way each line goes was read; how far it goes is our judgement.',
  'nutrients.series-organic':
    'In peat, bark and very organic soil every line lies about one pH unit to the sour side. These lines are from memory.',
  'nutrients.chart-critique':
    'pH alone never tells what a plant can use: soils differ, and roots change the pH around them. A soil test tells more than any chart.',
  'nutrients.chart-origin':
    'The first chart, of 1936, was meant for well-drained soils of rainy regions, not for wet, limy or peaty ones.',
  'nutrients.picture-title': 'How usable nutrients are along the pH scale',
  'nutrients.picture-series-classic': 'the old chart, read from memory',
  'nutrients.picture-series-revised': 'newer work, size judged by us',
  'nutrients.picture-series-organic': 'peat and bark, from memory',
  'nutrients.picture-today': 'today, pH {ph}',
  'nutrients.picture-planned': 'planned, pH {ph}',
  'nutrients.picture-key': 'Line: how usable, low to high. Broken line: danger. Grey: how sure.',
  'nutrients.picture-line': '{subject}: {word} at pH {ph}.',
  'nutrients.word-good': 'good',
  'nutrients.word-fair': 'fair',
  'nutrients.word-poor': 'poor',
  'nutrients.danger-word-none': 'no danger',
  'nutrients.danger-word-some': 'some danger',
  'nutrients.danger-word-high': 'high danger',
  'nutrients.name-aluminium-toxicity': 'aluminium poison',
  'nutrients.name-manganese-toxicity': 'manganese poison',
  'nutrients.name-sodium-hazard': 'sodium',

  // why
  'nutrients.why-n':
    'Microbes turn ammonium into nitrate. Below about pH 6 they slow down, and below 5 they nearly stop.',
  'nutrients.why-p':
    'Iron and aluminium hold phosphorus in sour soil, lime holds it in limy soil. Roots take it up more easily in sour soil, so newer work doubts the old peak near 6.5.',
  'nutrients.why-k': 'Potassium hardly cares about pH. Sour sandy soil is short of it because rain washed it out.',
  'nutrients.why-s': 'As pH rises the soil holds less sulfate and roots take up less. The two cancel.',
  'nutrients.why-ca': 'Sour soil has lost its calcium: acid took its place on clay and humus.',
  'nutrients.why-mg': 'Sour soil has lost its magnesium: acid took its place on clay and humus.',
  'nutrients.why-fe': 'Iron turns into rust that roots can hardly dissolve as the pH rises.',
  'nutrients.why-mn': 'Manganese turns into solid oxide as the pH rises. Wet soil frees it again at any pH.',
  'nutrients.why-b': 'Roots take boron only as boric acid without charge, and below pH 8 nearly all of it is that.',
  'nutrients.why-cu': 'Humus holds most of the copper at every pH, so the pH changes little.',
  'nutrients.why-zn':
    'Soil holds zinc more tightly as the pH rises, but roots take it faster, so it falls only a little.',
  'nutrients.why-mo': 'Sour soil holds molybdenum tightly. It is the one nutrient that clearly gains as the pH rises.',
  'nutrients.why-al': 'Below about pH 5 clay lets aluminium go into the water, and it burns root tips.',

  // dangers
  'nutrients.danger-aluminium-toxicity-some': 'At pH {ph} aluminium may begin to hurt roots in mineral soil.',
  'nutrients.danger-aluminium-toxicity-high': 'At pH {ph} aluminium is likely to hurt the roots of many plants.',
  'nutrients.danger-manganese-toxicity-some': 'At pH {ph} manganese may become too much, most of all in wet soil.',
  'nutrients.danger-manganese-toxicity-high': 'At pH {ph} manganese may be too much for many plants.',
  'nutrients.danger-sodium-hazard-some': 'At pH {ph} sodium may be behind it. Have sodium tested.',
  'nutrients.danger-sodium-hazard-high':
    'A pH of {ph} mostly means sodium. Have sodium tested before anything is spread: that is another cure.',
  'nutrients.critical-ph':
    '{plant} may grow less well below pH {limit} (from memory: nobody could retrieve the publication).',
  'nutrients.molybdenum-sour':
    'Below pH 5.5 cauliflowers, peas and beans may go short of molybdenum. Lifting the pH mostly cures it; add none.',
  'nutrients.pot-iron-short':
    '{plant} cannot take up enough iron in a mix above pH {limit}; it reads {ph}. Lower the pH of the mix or the water before you feed iron.',
  'nutrients.pot-iron-much':
    '{plant} takes up too much iron and manganese in a mix below pH {limit}; it reads {ph}. Raise the pH of the mix, and stop feeds that sour it.',

  // enough, locked, short, too much
  'nutrients.class': '{value} {unit} of {nutrient} by {extractant} is "{class}" ({standard}).',
  'nutrients.class-index':
    'The {nutrient} index, from the {extractant} figure and the pH, is {value}: "{class}" ({standard}).',
  'nutrients.other-standard': 'Another standard ({standard}) calls the same figure "{class}".',
  'nutrients.no-classes':
    'There are no published classes here for {nutrient} by {extractant}. Figures of another extractant cannot stand in for it.',
  'nutrients.soil-test-of-mix':
    '{extractant} classes are for soil, and this is a potting mix. Have {nutrient} tested by saturated extract.',
  'nutrients.mix-test-of-soil':
    '{extractant} classes are for potting mixes, and this is soil. Have {nutrient} tested as soil.',
  'nutrients.wrong-phosphorus-test':
    '{extractant} misleads about {nutrient} above pH 7.2 (from memory). Ask the laboratory for an Olsen test.',
  'nutrients.olsen-better': 'Above pH 7.2 an Olsen test tells more about phosphorus (from memory).',
  'nutrients.boron-limit-doubtful':
    'The printed upper limit for boron, 20 mg/kg, looks far too high for tender plants. Give no boron at this level.',
  'nutrients.only-just': 'That is only just enough {nutrient}. Test again after the next crop.',
  'nutrients.short-and-locked': 'At pH {ph} some of the {nutrient} is locked as well, so what you add works poorly.',
  'nutrients.locked-above': 'Above pH {limit} {nutrient} is locked up; the pH is {ph}.',
  'nutrients.locked-below': 'Below pH {limit} {nutrient} is locked up; the pH is {ph}.',
  'nutrients.locked-line': 'At pH {ph} {nutrient} is poorly usable.',
  'nutrients.phosphorus-doubt': 'Newer work doubts that sour soil locks phosphorus; cold soil gives the same signs.',
  'nutrients.index-limy': 'The soil holds manganese, but the pH above 6.5 pulls the index down.',
  'nutrients.index-short': 'The pH is not to blame: the soil holds little manganese.',
  'nutrients.potassium-pushes': 'So much potassium can keep magnesium out of the plant. Stop giving potassium.',
  'nutrients.phosphorus-pushes':
    'So much phosphorus on limy soil can keep zinc out of the plant. Stop giving phosphorus.',
  'nutrients.add-none': 'Add no {nutrient}.',
  'nutrients.add-none-until-known': 'Add no {nutrient} until a fitting test says so.',
  'nutrients.add-some': 'Add {nutrient} as the laboratory or the label says, and test again next year.',
  'nutrients.locked-no-feed': 'More {nutrient} in the soil will not help: it is there, but locked. Move the pH first.',
  'nutrients.iron-order':
    'Look at drainage first. Then use an iron chelate made for your pH, as its label says, while the pH comes down slowly. Plain iron salts do nothing in limy soil.',
  'nutrients.iron-short':
    'A soil that holds too little {nutrient} is rare. Rule out wet, cold and sick roots first; then feed the leaves as the label says.',
  'nutrients.manganese-locked':
    'Stop liming. Feeding the leaves with manganese, as the label says, helps for this season.',
  'nutrients.manganese-sour': 'Raise the pH to above 5.5, and drain wet ground. Give no manganese.',
  'nutrients.manganese-wet': 'Give no manganese, and see that the ground drains.',
  'nutrients.phosphorus-locked': 'Wait for warm soil too. Phosphorus you add runs off into ponds and streams.',
  'nutrients.zinc-locked': 'Feeding the leaves with zinc, as the label says, helps for this season.',
  'nutrients.magnesium-sour': 'Dolomitic lime cures both: it raises the pH and brings magnesium.',
  'nutrients.magnesium-plain': 'Use magnesium sulfate, not lime: the pH needs no lifting for this.',
  'nutrients.calcium-transport':
    'Add no calcium. Rotten fruit ends and brown leaf edges come from uneven watering far more often than from soil.',
  'nutrients.boron-short':
    'Give one light dose as the label says, and test first: the step from too little boron to poison is small.',
  'nutrients.boron-much': 'Give no boron. Test the water you use for boron too.',
  'nutrients.too-much': 'Add no {nutrient} for some years, nor compost or manure rich in it.',

  // diseases
  'nutrients.disease-unknown': '"{disease}" is no disease of our list, so it changes nothing.',
  'nutrients.disease-no-host': 'Nothing that grows here catches {disease}, so it changes nothing.',
  'nutrients.disease-no-limit': 'No pH is known that holds {disease} down without harm.',
  'nutrients.disease-above': '{disease} is held down above pH {limit}. The spores live on; keep up the rotation.',
  'nutrients.disease-below': '{disease} is held down below pH {limit}.',
  'nutrients.disease-trust': 'How far that can be trusted for {disease}: {reliability}. Do not count on the pH alone.',
  'nutrients.disease-refused':
    '{plant} does not stand the pH {limit} that {disease} asks for, so the target stays as it is.',
  'nutrients.disease-conflict':
    '{a} wants the soil limier than {b} allows. No pH serves both: grow their plants in different places.',

  // weeds
  'nutrients.weed-unknown': '"{weed}" is not in our list of weeds.',
  'nutrients.weed-span': '{weed} grows from pH {low} to {high}. It tells nothing.',
  'nutrients.weed-span-hint': '{weed} is on record from pH {low} to {high}: a faint hint at best.',
  'nutrients.weed-several': '{weed} is a hint of sour soil only where several plants of its kind grow together.',
  'nutrients.weed-other-reasons': '{weed} comes from shade, wet or poor ground as often as from sour soil.',
  'nutrients.weeds-nothing': 'These weeds tell nothing about the pH.',
  'nutrients.weeds-sour-weak': 'At best a faint hint of sour soil.',
  'nutrients.weeds-sour-fair': 'A stand of several such plants is a fair hint of sour soil.',
  'nutrients.weeds-sweet-weak': 'At best a faint hint of limy soil.',
  'nutrients.weeds-test-first':
    'Test first. Even all wild plants of a place together explain less than half of what the pH meter shows.',
} as const;
